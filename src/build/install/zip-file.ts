import { strToU8, zipSync } from "fflate";

/** A file that goes into a zip: its path there, with forward slashes, and what it holds. */
export interface ZippedFile {
  readonly name: string;
  readonly content: string | Uint8Array;
}

/**
 * The files as a zip, in the order given: the same bytes whenever and wherever it is made.
 *
 * @returns the bytes of the zip
 */
export function zipFile(files: readonly ZippedFile[]): Uint8Array {
  const entries = files.map(({ name, content }) => [
    name,
    typeof content === "string" ? strToU8(content) : content,
  ]);
  // One day for all. A zip holds wall-clock times without a zone, so the day is made in that of now.
  return zipSync(Object.fromEntries(entries), { level: 9, mtime: new Date(2026, 0, 1) });
}
