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
