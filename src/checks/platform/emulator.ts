import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { createContext, runInContext } from "node:vm";
import { build, type Plugin } from "esbuild";
import type { Desk } from "./inside/desk";
import type { person } from "./inside/person";
import type { StoredBook } from "./rest/stored-book";

const HERE = "src/checks/platform";
const DIST = "dist";

/** A workbook in the emulator, with the built add-in bound to it. */
export interface Emulated {
  readonly person: typeof person;
  readonly desk: Desk;
  /** Runs a function of the script as a menu or the page would; only JSON passes, as there. */
  run(name: string, request?: unknown): unknown;
}

/** The emulator's own way to the network gives way to ours. */
const ourNetwork: Plugin = {
  name: "our network",
  setup(bundling) {
    bundling.onResolve({ filter: /\/syncit\.js$/ }, () => ({
      path: path.resolve(HERE, "inside/network.ts"),
    }));
  },
};

/** The emulator with what is lent to it, as one script; made once a run. */
export async function emulatorSource(): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [path.join(HERE, "inside/start.ts")],
    bundle: true,
    write: false,
    platform: "node",
    target: "node20",
    format: "iife",
    globalName: "emulator",
    plugins: [ourNetwork],
    // Loaded and never called: nobody signs in.
    external: ["google-auth-library"],
    logLevel: "error",
  });
  return outputFiles[0]?.text ?? "";
}

/**
 * Opens a workbook in a context of its own, since the emulator makes its services global and changes
 * the console of the place where it runs.
 *
 * @param now what the clock shows all the while, milliseconds since 1970
 */
export function openEmulated(source: string, book: StoredBook, now: number): Emulated {
  const context = createContext({
    require: createRequire(path.resolve("package.json")),
    process: { env: { QUIET: "true" }, argv: ["node", "check"], versions: process.versions },
    console: { ...console },
    Buffer,
    URL,
    TextEncoder,
    TextDecoder,
    setTimeout,
    clearTimeout,
  });
  const run = (code: string) => runInContext(code, context);
  run(`{
    const RealDate = Date;
    globalThis.Date = class Date extends RealDate {
      constructor(...given) { if (given.length === 0) super(${now}); else super(...given); }
      static now() { return ${now}; }
    };
  }`);
  run(source);
  const { emulator } = context;
  emulator.open(JSON.stringify(book), readFileSync(path.join(DIST, "Sidebar.html"), "utf8"));
  run(readFileSync(path.join(DIST, "Code.js"), "utf8"));
  return {
    person: emulator.person,
    desk: emulator.desk,
    run(name, request) {
      const asked = request === undefined ? "" : JSON.stringify(request);
      const answer = run(`JSON.stringify(${name}(${asked}))`) as string | undefined;
      return answer === undefined ? undefined : JSON.parse(answer);
    },
  };
}
