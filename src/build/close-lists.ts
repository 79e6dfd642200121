import { readFileSync } from "node:fs";
import type { Plugin } from "esbuild";

/** The files of words, and the table that is made for them. */
const FILES = /[\\/]core[\\/]words[\\/](?:[a-z]+|calendar-names\.table)\.ts$/;

/** "sow, sowing" as "sow,sowing": the reader of the lists drops the spaces, which are for the eye. */
export function closedUp(source: string): string {
  return source.replace(/([,;`])\s+(?=[a-z`])/g, "$1");
}

/**
 * Takes the spaces and line breaks out of the lists of words: the spreadsheet loads every byte of
 * them for each formula.
 */
export const closeLists: Plugin = {
  name: "close-lists",
  setup(build) {
    build.onLoad({ filter: FILES }, ({ path }) => ({
      contents: closedUp(readFileSync(path, "utf8")),
      loader: "ts",
    }));
  },
};
