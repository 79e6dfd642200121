import { spawn } from "node:child_process";
import path from "node:path";
import { text } from "node:stream/consumers";
import { tooHungry, tooSlow, unreadable } from "../sentences/made/file-faults";
import { LONGEST_READING_MS, MOST_MEMORY_BYTES } from "./file-limits";
import { PersonError } from "./person-error";
import { projectRoot } from "./project-root";
import type { SheetDraft } from "./workbook-data";

/** What the reading process gets. */
export interface ReaderTask {
  readonly file: string;
  /** Names of the add-in's functions, upper case. */
  readonly addInNames: readonly string[];
  readonly limits: ReadingEnds;
}

/** Where the reading ends, whatever the file holds. */
export interface ReadingEnds {
  /** Milliseconds of the processor. */
  readonly cpuMs: number;
  /** Memory of the process, all in all. */
  readonly bytes: number;
}

/** What it gives back; an empty cell is null. */
export type ReaderAnswer =
  | { readonly drafts: readonly SheetDraft[] }
  | { readonly trouble: string };

/** The part of the memory that JavaScript's own values may take; byte arrays come on top. */
const HEAP_SHARE = 0.8;

/**
 * The tabs of a person's file, read in a process of its own: a file that is damaged or made to do
 * harm can stop that process and nothing else. The file is only read.
 *
 * @param addInNames names of the add-in's functions, upper case
 * @throws PersonError when it is missing, of another kind, damaged, empty, or takes too long or too
 *   much memory to read
 */
export async function readApart(
  file: string,
  addInNames: ReadonlySet<string>,
  limits: ReadingEnds = { cpuMs: LONGEST_READING_MS, bytes: MOST_MEMORY_BYTES },
): Promise<SheetDraft[]> {
  const root = projectRoot();
  const heap = Math.round((limits.bytes * HEAP_SHARE) / 2 ** 20);
  const reader = spawn(
    process.execPath,
    [
      `--max-old-space-size=${heap}`,
      path.join(root, "src/build/run.mjs"),
      "src/local/file-reader.ts",
    ],
    { cwd: root, stdio: "pipe" },
  );
  const ended = new Promise<number | null>((resolve, reject) => {
    reader.once("error", reject);
    reader.once("close", resolve);
  });
  // A reader that is gone already takes no task; how it ended says why.
  reader.stdin.on("error", () => {});
  const task: ReaderTask = { file: path.resolve(file), addInNames: [...addInNames], limits };
  reader.stdin.end(JSON.stringify(task));
  const [output, complaint, code] = await Promise.all([
    text(reader.stdout),
    text(reader.stderr),
    ended,
  ]);
  if (code !== 0) throw whyNot(path.basename(file), complaint);
  const answer = JSON.parse(output) as ReaderAnswer;
  if ("trouble" in answer) throw new PersonError(answer.trouble);
  return answer.drafts.map((draft) => ({
    ...draft,
    rows: draft.rows.map((row) => row.map((cell) => cell ?? undefined)),
  }));
}

function whyNot(fileName: string, complaint: string): Error {
  if (/^over time$/m.test(complaint)) return new PersonError(tooSlow({ file: fileName }));
  if (/^over memory$|out of memory|allocation failed/im.test(complaint)) {
    return new PersonError(tooHungry({ file: fileName }));
  }
  return new PersonError(unreadable({ file: fileName }));
}
