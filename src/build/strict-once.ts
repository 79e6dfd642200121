import { readFileSync } from "node:fs";
import type { Plugin } from "esbuild";

const FILES = /[\\/]@stdlib[\\/].*\.js$/;

/**
 * The library says in each of its files that it is strict. The bundle says so once, for all, in
 * loaderHead: the spreadsheet loads every byte of it for each formula.
 */
export const strictOnce: Plugin = {
  name: "strict-once",
  setup(build) {
    build.onLoad({ filter: FILES }, ({ path }) => ({
      contents: readFileSync(path, "utf8").replace(/^(['"])use strict\1;$/m, ""),
    }));
  },
};
