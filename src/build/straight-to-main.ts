import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import type { Plugin } from "esbuild";

/** Tells our own question to the resolver from the bundle's. */
const ASKED = Symbol("asked");

/** A file that does nothing but hand on `main.js` beside it, once its comments are off. */
const HANDS_ON =
  /^(['"]use strict['"];)?\s*var (\w+) = require\( '\.\/main\.js' \);\s*module\.exports = \2;\s*$/;

/**
 * Most packages of the library have a file before their function that only hands it on, which the
 * bundle would wrap as a module of its own: it goes to the function straight.
 */
export const straightToMain: Plugin = {
  name: "straight-to-main",
  setup(build) {
    build.onResolve({ filter: /^@stdlib\/[\w-]+$/ }, async (asked) => {
      const { path, kind, resolveDir, importer, pluginData } = asked;
      if (pluginData === ASKED) return undefined;
      const found = await build.resolve(path, { kind, resolveDir, importer, pluginData: ASKED });
      const main = join(dirname(found.path), "main.js");
      const isPassage =
        found.namespace === "file" &&
        existsSync(main) &&
        HANDS_ON.test(withoutComments(found.path));
      return isPassage ? { path: main } : found;
    });
  },
};

function withoutComments(path: string): string {
  return readFileSync(path, "utf8")
    .replace(/\/\*[\s\S]*?\*\//g, "")
    .replace(/^\s*\/\/.*$/gm, "")
    .trim();
}
