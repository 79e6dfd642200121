import { scriptFails, scriptUnread } from "../../../sentences/made/local-page";
import { realmOf, type ScriptRealm } from "../../spreadsheet-app/script-realm";

/** A context of its own that the add-in's script can be loaded into: a frame that nobody sees. */
export interface ScriptFrame {
  readonly realm: ScriptRealm;
  /** Puts the services in place and loads the script. @throws Error when it does not load */
  load(globals: Readonly<Record<string, unknown>>): Promise<void>;
  /** A top-level function of the loaded script, or null. */
  functionNamed(name: string): ((...parameters: readonly unknown[]) => unknown) | null;
  /** The names of all top-level functions of the loaded script. */
  functionNames(): string[];
  remove(): void;
}

/** The language itself, which stays; all else that a browser adds goes. Source: ECMA-262, ECMA-402. */
const LANGUAGE = new Set(
  `Object Function Array Number parseFloat parseInt Infinity NaN undefined Boolean String Symbol
   Date Promise RegExp Error AggregateError EvalError RangeError ReferenceError SyntaxError
   TypeError URIError globalThis JSON Math Intl ArrayBuffer Uint8Array Int8Array Uint16Array
   Int16Array Uint32Array Int32Array Float32Array Float64Array Uint8ClampedArray BigUint64Array
   BigInt64Array DataView Map BigInt Set WeakMap WeakSet WeakRef FinalizationRegistry Proxy Reflect
   decodeURI decodeURIComponent encodeURI encodeURIComponent escape unescape eval isFinite isNaN
   Iterator console WebAssembly`.split(/\s+/),
);

/**
 * Opens an empty context.
 *
 * A frame rather than a script in the page: every run gets a fresh one, as in the cloud, so what a
 * run leaves in its globals can't help the next; `instanceof` holds within; the page's own globals
 * stay clean; and what browsers have and the cloud lacks (timers, fetch, URL ...) is taken away.
 * It is of the page's origin, because functions must be called across without waiting.
 */
export async function openScriptFrame(): Promise<ScriptFrame> {
  const frame = document.createElement("iframe");
  frame.hidden = true;
  frame.title = "The add-in's script";
  frame.src = "script.html";
  await new Promise((resolve) => {
    frame.addEventListener("load", resolve, { once: true });
    document.body.append(frame);
  });
  const inside = frame.contentWindow as unknown as Record<string, unknown> & typeof globalThis;
  const document_ = frame.contentDocument as Document;
  const realm = realmOf(inside);
  for (const name of Object.getOwnPropertyNames(inside)) {
    // Some can't be taken away: window, document, location, top.
    if (!LANGUAGE.has(name)) Reflect.deleteProperty(inside, name);
  }
  const before = new Set<string>();
  return {
    realm,
    async load(globals) {
      let problem = "";
      inside.onerror = (message: unknown) => {
        problem = String(message);
        return true;
      };
      Object.assign(inside, globals);
      for (const name of Object.getOwnPropertyNames(inside)) before.add(name);
      await new Promise<void>((resolve, reject) => {
        const script = document_.createElement("script");
        script.src = "Code.js";
        script.addEventListener("load", () => resolve());
        script.addEventListener("error", () => reject(new Error(scriptUnread())));
        document_.head.append(script);
      });
      if (problem) throw new Error(scriptFails({ why: problem }));
    },
    functionNamed(name) {
      const found = before.has(name) ? undefined : inside[name];
      return typeof found === "function"
        ? (...parameters) => Reflect.apply(found, undefined, parameters)
        : null;
    },
    functionNames: () =>
      Object.getOwnPropertyNames(inside).filter(
        (name) => !before.has(name) && typeof inside[name] === "function",
      ),
    remove: () => frame.remove(),
  };
}
