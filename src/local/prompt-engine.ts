import { readFileSync } from "node:fs";
import type { Plugin } from "esbuild";

/** The engine's module that begins a calculation 100 ms after the last change. */
const MODULE = /@univerjs[\\/]sheets-formula[\\/]lib[\\/]es[\\/]index\.js$/;
const WAITS = "this._waitingCommandQueue = [];\n\t\t\t}, 100);";
/** A second after a calculation began it tells of progress, though the workbook be closed by then, and throws. */
const TELLS = "startDependencyTimer = null;\n\t\t\t\t\t\tthis._startProgress();";

/**
 * That module, beginning at once after what was changed in one go; null for any other file. It waits for
 * a fast typist, and here that is a tenth of a second before every answer.
 * @throws Error when another version of the engine waits in another way
 */
export function promptModule(path: string): string | null {
  if (!MODULE.test(path)) return null;
  const changes = [
    [WAITS, WAITS.replace("100", "0")],
    [TELLS, TELLS.replace("this.", "if (!this._disposed) this.")],
  ] as const;
  return changes.reduce(
    (text, [old, own]) => {
      const parts = text.split(old);
      if (parts.length !== 2) throw new Error(`prompt-engine.ts no longer fits ${path}`);
      return parts.join(own);
    },
    readFileSync(path, "utf8"),
  );
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
