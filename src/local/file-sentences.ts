import * as text from "../sentences/made/file-faults";
import { MOST_FILE_BYTES } from "./file-limits";

/** What is said of a file with more bytes than are read. */
export function tooLarge(file: string): string {
  return text.tooLarge({ file, most: MOST_FILE_BYTES / 2 ** 20 });
}
