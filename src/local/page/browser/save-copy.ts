import { noAnswer } from "../../../sentences/made/local-page";
import { errorWords } from "../call-answerer";
import { SAVE_ADDRESS, type SavedCopy, XLSX_TYPE } from "../saved-copy";

/**
 * Has the program write a copy of the workbook beside the file that it was started with.
 * @returns the name of the new file
 * @throws Error with one sentence when it can't be written
 */
export async function saveBeside(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const answer = await fetch(SAVE_ADDRESS, {
    method: "POST",
    headers: { "content-type": XLSX_TYPE },
    body: bytes,
  }).catch((error: unknown) => {
    throw new Error(noAnswer({ why: errorWords(error).text }));
  });
  if (!answer.ok) throw new Error(await answer.text());
  const { name }: SavedCopy = await answer.json();
  return name;
}

/** Hands the bytes of a workbook to the browser as a download. */
export function download(bytes: Uint8Array<ArrayBuffer>, fileName: string): void {
  const address = URL.createObjectURL(new Blob([bytes], { type: XLSX_TYPE }));
  const link = document.createElement("a");
  link.href = address;
  link.download = fileName;
  link.click();
  // Not at once: the browser may still be reading.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
