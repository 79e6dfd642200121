import vm from "node:vm";
import { type Comment, type Node, type Program, parse } from "acorn";
import { beforeAll, describe, expect, it } from "vitest";
import { SIDEBAR_CALLS } from "../../src/build/stubs";
import { registry } from "../../src/functions/registry";
import { type BuiltAddIn, buildAddIn } from "../support/built-add-in";
import { freeNames } from "../support/free-names";

let built: BuiltAddIn;
let code: string;
let program: Program;
const comments: Comment[] = [];

beforeAll(() => {
  built = buildAddIn();
  code = built.read("Code.js");
  // A script, not a module, of the year 2020: import, export, top-level await, class fields and
  // private names don't parse.
  program = parse(code, { ecmaVersion: 2020, sourceType: "script", onComment: comments });
});

const declared = (name: string) =>
  program.body.find((one) => one.type === "FunctionDeclaration" && one.id.name === name);

/** The block comment that ends right before a node, nothing but white space between. */
function commentBefore({ start }: Node): string {
  const before = comments.filter(({ type, end }) => type === "Block" && end <= start).at(-1);
  if (before === undefined || code.slice(before.end, start).trim() !== "") return "";
  return before.value;
}

describe("Code.js", () => {
  it("declares at its top what is called from outside by name, and one name for itself", () => {
    const names = program.body.flatMap((one) => {
      if (one.type === "FunctionDeclaration") return [one.id.name];
      if (one.type === "VariableDeclaration") {
        return one.declarations.map(({ id }) => (id.type === "Identifier" ? id.name : "?"));
      }
      return one.type === "ExpressionStatement" && "directive" in one ? [] : [one.type];
    });
    expect(names.sort()).toEqual(
      [
        ...registry.map(({ name }) => name),
        // Events and the menu.
        ...["onOpen", "onInstall", "onEdit", "showSidebar", "refreshDueList", "writeTicked"],
        // What the sidebar page may call, which anyone who sees the page can: nothing more.
        ...SIDEBAR_CALLS,
        ...["nurseryBatches_", "answer_", "sidebar_"],
      ].sort(),
    );
  });

  it.each(registry)("declares $name with its parameters under their own names", (entry) => {
    const stub = declared(entry.name);
    if (stub?.type !== "FunctionDeclaration") throw new Error(`${entry.name} is not declared`);
    expect(stub.params.map((one) => (one.type === "Identifier" ? one.name : one.type))).toEqual(
      entry.parameters.map(({ name }) => name),
    );
    expect([stub.async, stub.generator]).toEqual([false, false]);
  });

  it.each(registry)("says of $name what the registry says, right before it", (entry) => {
    const stub = declared(entry.name);
    if (stub === undefined) throw new Error(`${entry.name} is not declared`);
    const comment = commentBefore(stub);
    expect(comment.startsWith("*")).toBe(true);
    const lines = comment.split("\n").map((line) => line.replace(/^\s*\*? ?/, "").trim());
    expect(lines).toContain(entry.sentence);
    expect(lines).toContain("@customfunction");
    expect(lines.filter((line) => line.startsWith("@param"))).toEqual(
      entry.parameters.map(({ name, sentence }) => `@param {any} ${name} ${sentence}`),
    );
  });

  it("uses no name that the script server lacks, unless a typeof has asked for it first", () => {
    const language: string[] = vm.runInNewContext("Object.getOwnPropertyNames(globalThis)");
    const known = new Set([
      ...[...language, "SpreadsheetApp", "HtmlService", "Utilities"],
      ...["LockService", "Session", "PropertiesService", "ScriptApp"],
    ]);
    for (const lacking of ["SharedArrayBuffer", "Atomics", "WebAssembly"]) known.delete(lacking);
    for (const web of [
      ...[
        "setTimeout",
        "setInterval",
        "URL",
        "fetch",
        "TextEncoder",
        "process",
        "Buffer",
        "window",
      ],
      ...["document", "crypto", "performance", "structuredClone", "queueMicrotask", "atob", "btoa"],
      ...["navigator", "require", "module", "exports", "global", "self", "Blob", "File"],
    ]) {
      expect([web, known.has(web)]).toEqual([web, false]);
    }
    const free = freeNames(program);
    // The walk must have seen something, or it shows nothing.
    expect(free.map(({ name }) => name)).toEqual(
      expect.arrayContaining(["Math", "SpreadsheetApp"]),
    );
    const unguarded = free.filter(({ name, guarded }) => !guarded && !known.has(name));
    expect([...new Set(unguarded.map(({ name }) => name))]).toEqual([]);
  });

  it("reads no clock and throws no dice", () => {
    expect(code).not.toMatch(/Math\.random|Date\.now|new Date\(\)/);
  });

  it("loads where there is nothing but the language, and answers there", () => {
    const context = vm.createContext(Object.create(null));
    vm.runInContext("delete globalThis.SharedArrayBuffer; delete globalThis.Atomics;", context);
    vm.runInContext(code, context);
    for (const { name, parameters } of registry) {
      expect(vm.runInContext(`typeof ${name} + ${name}.length`, context)).toBe(
        `function${parameters.length}`,
      );
    }
    expect(vm.runInContext("TAKE_RATE(8, 10)", context)).toBe(0.8);
    expect(vm.runInContext("TIMETABLE()[0][0]", context)).toBe("Method");
  });

  it("touches nothing of the spreadsheet while it loads", () => {
    const touched: string[] = [];
    const trap = (name: string) =>
      new Proxy(() => undefined, {
        get: (_, key) => touched.push(`${name}.${String(key)}`),
        apply: () => touched.push(name),
      });
    const services = [
      ...["SpreadsheetApp", "HtmlService", "Utilities", "Session", "PropertiesService"],
      ...["LockService", "CacheService", "ScriptApp"],
    ];
    const context = vm.createContext(Object.fromEntries(services.map((one) => [one, trap(one)])));
    vm.runInContext(code, context);
    expect(touched).toEqual([]);
  });

  it("says the help of a function once, before its stub", () => {
    const counts = registry.map(({ name, sentence }) => [
      name,
      code.split(` * ${sentence}\n`).length - 1,
    ]);
    expect(counts).toEqual(registry.map(({ name }) => [name, 1]));
  });

  it("is strict as a whole, and says so once", () => {
    expect(code.match(/^function nurseryBatches_\(\)\{"use strict";/m)).not.toBeNull();
    expect(code.split('"use strict"').length - 1).toBe(1);
  });

  // It is loaded for each call of a function, where the time counts (see the bench), and pasted by hand;
  // no limit of the platform is published. Words of five languages, of headers whole and in parts, and what a
  // person tells of theirs are worth their room, and so are a check that names day and month swapped and scions
  // told by variety. Six of them are for words spelt out in one search: a formula answers a third sooner; eight tell
  // losses by stage and reason with their cost; the last thirty are for the words of more offices, for tables
  // beside the records as strangers head them and for care that comes again; sixteen
  // more for what methods' sources say, four for work ahead of steps and the rows of care, tables beside the records
  // checked, and samples of seed, of any size and in a table; five where these tables stand, told in Set up. Seven are
  // for tabs made on choice and the overview that leads to all; four for looks that are switched off, jobs that are
  // not to be done, columns that are offered, and samples of seed; four for a look back that judges what died and tries
  // a plain rule beside; two say which shares an answer counts on, and hide looks in formulas too; seven are for what
  // is asked about where it was taken, ditto marks beside the records, and more of the trade's words; two for likely numbers that add up. What licences
  // ask for is no code, and can't be less.
  it("is below 526 KB without its notices, and these below 6 KB", () => {
    const end = code.indexOf("*/") + 2;
    expect(Buffer.byteLength(code.slice(end))).toBeLessThan(526_000);
    expect(Buffer.byteLength(code.slice(0, end))).toBeLessThan(6_000);
  });
});
