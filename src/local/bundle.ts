import vm from "node:vm";
import { type CatalogueEntry, readCatalogue } from "./catalogue";
import { type ScriptSettings, scriptServices } from "./script-services";

/** The built add-in, loaded and ready to be called. */
export interface Bundle {
  readonly functions: readonly CustomFunction[];
  readonly realm: Realm;
  readonly settings: ScriptSettings;
}

export interface CustomFunction extends CatalogueEntry {
  /** Calls the function; it throws what the function throws. */
  readonly call: (...parameters: readonly unknown[]) => unknown;
}

/**
 * Makes values with the constructors of the context that the add-in runs in: there a `Date` or
 * an array from outside would fail `instanceof`, which it never does in a spreadsheet.
 */
export interface Realm {
  date(instant: number): Date;
  array(items: readonly unknown[]): unknown[];
}

/**
 * Loads the text of the built file into a fresh context.
 *
 * The context is bare on purpose: like Apps Script it has the language and no web or Node
 * globals (no timers, URL, TextEncoder, process). What is added is `console`, which speaks on
 * stderr, and the few services of script-services.ts.
 *
 * @param code the text of dist/Code.js
 * @param settings zones and locale. The script zone must be the zone of this process.
 * @throws Error when the text does not load, or holds no custom function
 */
export function loadBundle(code: string, settings: ScriptSettings): Bundle {
  const context = bareContext();
  Object.assign(context, scriptServices(settings));
  const realm: Realm = vm.runInContext(
    "({ date: (instant) => new Date(instant), array: (items) => Array.from(items) })",
    context,
  );
  vm.runInContext(code, context, { filename: "Code.js" });

  const functions: CustomFunction[] = [];
  for (const entry of readCatalogue(code)) {
    // A comment inside a wrapping function names nothing that a sheet could call.
    const declared: unknown = context[entry.name];
    if (typeof declared !== "function") continue;
    functions.push({
      ...entry,
      call: (...parameters) => Reflect.apply(declared, undefined, parameters),
    });
  }
  if (functions.length === 0) {
    throw new Error("The built file holds no function marked @customfunction");
  }
  return { functions, realm, settings };
}

/** A context with the language and `console`, and nothing of the web or of Node. */
export function bareContext(): vm.Context {
  const context = vm.createContext({ console: stderrConsole() });
  // Bare V8 contexts have these two, Apps Script has no use for them.
  vm.runInContext("delete globalThis.SharedArrayBuffer; delete globalThis.Atomics;", context);
  return context;
}

function stderrConsole(): Record<string, (...parts: unknown[]) => void> {
  const say = (...parts: unknown[]) => console.error(...parts);
  return { log: say, info: say, warn: say, error: say, time() {}, timeEnd() {} };
}
