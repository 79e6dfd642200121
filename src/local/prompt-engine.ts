import { readFileSync } from "node:fs";
import type { Plugin } from "esbuild";

/** The engine's module that begins a calculation 100 ms after the last change. */
const MODULE = /@univerjs[\\/]sheets-formula[\\/]lib[\\/]es[\\/]index\.js$/;
const WAITS = "this._waitingCommandQueue = [];\n\t\t\t}, 100);";

/**
 * That module, beginning at once after what was changed in one go; null for any other file. It waits for
 * a fast typist, and here that is a tenth of a second before every answer.
 * @throws Error when another version of the engine waits in another way
 */
export function promptModule(path: string): string | null {
  if (!MODULE.test(path)) return null;
  const parts = readFileSync(path, "utf8").split(WAITS);
  if (parts.length !== 2) throw new Error(`prompt-engine.ts no longer fits ${path}`);
  return parts.join(WAITS.replace("100", "0"));
}

/** The same in a bundle. */
export const promptEngine: Plugin = {
  name: "prompt engine",
  setup({ onLoad }) {
    onLoad({ filter: MODULE }, ({ path }) => ({
      contents: promptModule(path) ?? "",
      loader: "js",
    }));
  },
};
