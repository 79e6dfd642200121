import { readdirSync, readFileSync } from "node:fs";
import { join, sep } from "node:path";
import { type AnyNode, type Node, parse } from "acorn";
import { transformSync } from "esbuild";
import { describe, expect, it } from "vitest";

const MOST_PARAMETERS = 3;

/** Signatures that are the platform's own: the imitation has to take what a script hands over. */
const OF_THE_PLATFORM = [
  "src/local/spreadsheet-app/range-service.ts offset",
  "src/local/spreadsheet-app/sheet-service.ts getRange",
];

const FILES = readdirSync("src", { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".ts"))
  .map((name) => join("src", name).split(sep).join("/"));

/** Every node of a file's code below another, with the name that it is declared under. */
function nodesOf(code: string): readonly { readonly node: AnyNode; readonly name: string }[] {
  const found: { node: AnyNode; name: string }[] = [];
  const walk = (node: Node, name: string) => {
    const known = node as AnyNode;
    const named = nameOf(known) ?? name;
    found.push({ node: known, name: named });
    for (const part of Object.values(node).flat()) {
      if (typeof part === "object" && part !== null && "type" in part) walk(part as Node, named);
    }
  };
  const { code: plain } = transformSync(code, { loader: "ts" });
  walk(parse(plain, { ecmaVersion: "latest", sourceType: "module" }), "");
  return found;
}

/** The name that a function would go by that stands here; null where the node gives none. */
function nameOf(node: AnyNode): string | null {
  if (node.type === "FunctionDeclaration" || node.type === "ClassDeclaration") {
    return node.id?.name ?? null;
  }
  if (node.type === "VariableDeclarator")
    return node.id.type === "Identifier" ? node.id.name : null;
  if (node.type === "Property" || node.type === "MethodDefinition") {
    return node.key.type === "Identifier" ? node.key.name : null;
  }
  return null;
}

/** Functions with more parameters than a reader keeps apart by their order. */
function longLists(code: string): string[] {
  return nodesOf(code).flatMap(({ node, name }) =>
    "params" in node && node.params.length > MOST_PARAMETERS ? [name] : [],
  );
}

/** What literals are spread in, by the name that they stand under. */
function spreadLiterals(code: string): string[] {
  return nodesOf(code).flatMap(({ node, name }) =>
    node.type === "SpreadElement" &&
    (node.argument.type === "ArrayExpression" || node.argument.type === "ObjectExpression")
      ? [name]
      : [],
  );
}

function inFiles(find: (code: string) => string[]): string[] {
  return FILES.flatMap((file) => find(readFileSync(file, "utf8")).map((name) => `${file} ${name}`));
}

describe("functions", () => {
  it("take one object rather than more than three parameters", () => {
    expect(inFiles(longLists).sort()).toEqual(OF_THE_PLATFORM);
  });

  it.each([
    "export function long(a: 1, b: 2, c: 3, d?: 4) {}",
    "const long = (a: 1, b: 2, c: 3, { d }: { d: 4 }) => d;",
    "const all = { long(a: 1, b: 2, c: 3, d = 4) {} };",
    "class Any { long(a: 1, b: 2, c: 3, ...d: number[]) {} }",
  ])("would be named by: %s", (code) => {
    expect(longLists(code)).toEqual(["long"]);
  });
});

describe("literals", () => {
  it("are not spread: what stands in them can stand there itself", () => {
    expect(inFiles(spreadLiterals)).toEqual([]);
  });

  it("would be named where they are, and nothing else would", () => {
    expect(spreadLiterals("const row = [...[1, 2], 3];")).toEqual(["row"]);
    expect(spreadLiterals("const one = { ...({ a: 1 } as const), b: 2 };")).toEqual(["one"]);
    expect(spreadLiterals("const row = [...list, ...(is ? [1] : []), ...[1].map(to)];")).toEqual(
      [],
    );
  });
});

describe("the folders of src", () => {
  it("hold no declarations that the compiler made of a file beside them", () => {
    const made = FILES.filter((file) => file.endsWith(".d.ts")).filter((file) =>
      FILES.includes(file.replace(/\.d\.ts$/, ".ts")),
    );
    expect(made).toEqual([]);
  });
});

const MOST_LINES = 250;
/** Lists, which nobody reads from end to end, and what a program made of them. */
const LISTS = /^src\/(core\/words\/[a-z]+\.ts|sentences\/(made\/|[a-z]+\.ts))|\.table\.ts$/;

/** Whether a long file says at its top why it is one. */
function saysWhy(code: string): boolean {
  return /^\/\*\s*(?:\* )?Longer than most: \w/.test(code);
}

describe("files", () => {
  it("of more than 250 lines say at their top why", () => {
    const tests = readdirSync("tests", { recursive: true, encoding: "utf8" })
      .filter((name) => name.endsWith(".ts"))
      .map((name) => join("tests", name).split(sep).join("/"));
    expect(tests.length).toBeGreaterThan(200);
    const silent = [...FILES, ...tests].filter((file) => {
      if (LISTS.test(file)) return false;
      const code = readFileSync(file, "utf8");
      return code.trimEnd().split("\n").length > MOST_LINES && !saysWhy(code);
    });
    expect(silent).toEqual([]);
  });

  it("say it in the first comment, before anything else", () => {
    expect(saysWhy("/* Longer than most: a list of calls. */\nimport a;")).toBe(true);
    expect(saysWhy("/*\n * Longer than most: a list of calls,\n * each with its own.\n */\n")).toBe(
      true,
    );
    expect(saysWhy("import a;\n/* Longer than most: a list of calls. */")).toBe(false);
    expect(saysWhy("/* A list of calls. */")).toBe(false);
    expect(saysWhy("/* Longer than most: */")).toBe(false);
  });
});

/** Three words in a row, as in a sentence. */
const WORDS = /\p{L}[\p{Ll}']* [\p{Ll}']+ [\p{Ll}']+/u;

/** Rooms of what people use; words that are read, and methods with their sources, are data. */
const SPEAKING =
  /^src\/(core\/(?!words\/|timetable\/methods\/)|door|functions|workbook|sidebar|main\.ts)/;

/** An example of what is typed into a cell. */
const FORMULA = /^=[A-Z_]+\(/;

/** Texts of three words in a row in a file's code, formulas aside; 0 stands for what is filled in. */
function wordy(code: string): string[] {
  return nodesOf(code).flatMap(({ node }) => {
    if (node.type === "Literal" && typeof node.value === "string") {
      return WORDS.test(node.value) && !FORMULA.test(node.value) ? [node.value] : [];
    }
    if (node.type !== "TemplateLiteral") return [];
    const text = node.quasis.map(({ value }) => value.cooked ?? "").join("0");
    return WORDS.test(text) ? [text] : [];
  });
}

/** What is no sentence for people, though it looks like one. */
const NO_SENTENCES = {
  codes: [
    "no clear link",
    "not told apart",
    "others may be behind",
    "sums by numbers",
    "too few to tell",
  ],
  "names of columns, settings and tabs, which are read back": [
    "Header in your sheet",
    "not the same",
    "Hours a day",
    "How seed came up",
    "Places by week",
    "Plants counted at 0",
    "Ready by month",
    "Rootstock age in weeks",
    "Scion days stored",
    "Take count day",
    "Takes by month",
    "Takes compared by",
    "This nursery's method",
    "Up so far",
    "What it is",
    "What it is for",
    "What takes go with",
    "Where plants went",
    "d mmm yyyy",
    "plan of an order",
  ],
  "faults of ours, which nobody meets": [
    "0 is no whole number",
    "0 must not reach a cell",
    "a fit with a ridge has an answer",
    "a table that needs a day stands before it",
    "more flows than was asked for",
    "more flows to a team than it has",
    "row 0 was neither used nor listed",
    "the clock of 0 could not be read",
    "wall time not understood: 0",
  ],
};
/** Whole tables of examples. */
const EXAMPLES = "src/functions/example-workbook.ts";

describe("sentences", () => {
  it("are messages, in no file but those of src/sentences", () => {
    const found = FILES.filter((file) => SPEAKING.test(file) && file !== EXAMPLES).flatMap((file) =>
      wordy(readFileSync(file, "utf8")),
    );
    expect([...new Set(found)].sort()).toEqual(Object.values(NO_SENTENCES).flat().sort());
  });

  it("would be named where they stand, and nothing else would", () => {
    expect(wordy('say("Choose another tab.");')).toEqual(["Choose another tab."]);
    expect(wordy("const example = '=TIMETABLE(\"Cocoa cleft graft\")';")).toEqual([]);
    expect(wordy(["const words = `", "{tab} has no answer`;"].join("$"))).toEqual([
      "0 has no answer",
    ]);
    expect(wordy('call("sidebarOpen", "Due list", "#N/A");')).toEqual([]);
  });
});
