import { MOST_FILE_BYTES } from "./file-limits";

/** What is said of a file with more bytes than are read. */
export function tooLarge(fileName: string): string {
  return `${fileName} is too large: files of at most ${MOST_FILE_BYTES / 2 ** 20} MB are read`;
}

/** What is said of a file whose reading was ended because of the time it took. */
export function tooSlow(fileName: string): string {
  return `${fileName} is too large or damaged: reading it takes too long`;
}

/** What is said of a file whose reading was ended because of the memory it took. */
export function tooHungry(fileName: string): string {
  return `${fileName} is too large or damaged: reading it takes too much memory`;
}

/** What is said of a file on which the reading itself broke. */
export function unreadable(fileName: string): string {
  return `${fileName} can't be read: it is damaged, or made in a way that is not known here`;
}
