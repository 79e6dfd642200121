import { tooSlow, unreadable } from "../../../sentences/made/file-faults";
import { LONGEST_READING_IN_BROWSER_MS, MOST_FILE_BYTES } from "../../file-limits";
import { tooLarge } from "../../file-sentences";
import { PersonError } from "../../person-error";
import type { SheetDraft } from "../../workbook-data";
import type { ReadAnswer, ReadTask } from "../file-messages";

/**
 * The tabs of a file that the person has opened or dropped, read in a thread of its own: the page
 * stays alive, and ends the thread when it takes too long.
 *
 * @param addInNames names of the add-in's functions, upper case
 * @throws PersonError when it is of another kind, damaged, empty or too large, or takes too long
 */
export async function readInWorker(
  file: File,
  addInNames: ReadonlySet<string>,
): Promise<readonly SheetDraft[]> {
  // Before a byte of it is in memory.
  if (file.size > MOST_FILE_BYTES) throw new PersonError(tooLarge(file.name));
  const bytes = new Uint8Array(await file.arrayBuffer());
  const worker = new Worker("file-worker.js");
  try {
    const answer = await new Promise<ReadAnswer>((resolve, reject) => {
      const stop = () => reject(new PersonError(tooSlow({ file: file.name })));
      const timer = setTimeout(stop, LONGEST_READING_IN_BROWSER_MS);
      worker.onmessage = ({ data }: MessageEvent<ReadAnswer>) => {
        clearTimeout(timer);
        resolve(data);
      };
      worker.onerror = (event) => {
        event.preventDefault();
        clearTimeout(timer);
        reject(new PersonError(unreadable({ file: file.name })));
      };
      const task: ReadTask = { bytes, fileName: file.name, addInNames };
      worker.postMessage(task, [bytes.buffer]);
    });
    if ("trouble" in answer) throw new PersonError(answer.trouble);
    return answer.drafts;
  } finally {
    worker.terminate();
  }
}
