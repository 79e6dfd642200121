import type { sentenceFiles } from "./language-files.table";

/**
 * The languages whose sentences are built into the script and its page, English first.
 *
 * English alone for now: a spreadsheet loads the whole script for every formula, so its size has a limit
 * (tests/build/built-file.test.ts), and there is no room for the sentences of a second language. The files of
 * all others are checked all the same. A language is turned on by its name here and npm run sentences.
 */
export const BUILT_LANGUAGES = [
  "english",
] as const satisfies readonly (keyof typeof sentenceFiles)[];
