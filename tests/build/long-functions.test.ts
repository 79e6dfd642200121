import { readdirSync, readFileSync } from "node:fs";
import { join, sep } from "node:path";
import { parseSync } from "@swc/core";
import { describe, expect, it } from "vitest";

const FILES = readdirSync("src", { recursive: true, encoding: "utf8" })
  .map((name) => join("src", name).split(sep).join("/"))
  .filter((file) => file.endsWith(".ts") && !/^src\/sentences\/made\/|\.d\.ts$/.test(file));

const MOST_LINES = 80;

/** Nodes of the parser that have a function's body. */
const FUNCTIONS =
  /^(?:FunctionDeclaration|FunctionExpression|ArrowFunctionExpression|ClassMethod|MethodProperty)$/;

/** Functions of more lines that do not say why in the comment above them. */
function longFunctions(code: string): string[] {
  const bytes = Buffer.from(code);
  const lineOf = (byte: number) => bytes.subarray(0, byte).toString().split("\n").length;
  const module = parseSync(code, { syntax: "typescript", target: "es2022" });
  // Places are counted on from file to file; the module begins at its first word.
  const begin =
    module.span.start - Buffer.byteLength(/^(?:\s|\/\*[\s\S]*?\*\/|\/\/.*)*/.exec(code)?.[0] ?? "");
  const found: string[] = [];
  const walk = (node: unknown): void => {
    if (typeof node !== "object" || node === null) return;
    const { type = "", span } = node as { type?: string; span?: { start: number; end: number } };
    if (FUNCTIONS.test(type) && span !== undefined) {
      const from = lineOf(span.start - begin);
      const isLong = lineOf(span.end - begin) - from >= MOST_LINES;
      const above = code
        .split("\n")
        .slice(0, from - 1)
        .join("\n");
      const comment = /\/\*\*(?:(?!\*\/)[\s\S])*\*\/\s*$/.exec(above)?.[0] ?? "";
      if (isLong && !/Longer than most: \w/.test(comment))
        found.push(code.split("\n")[from - 1]?.trim() ?? "");
    }
    for (const part of Object.values(node).flat()) walk(part);
  };
  walk(module.body);
  return found;
}

describe("functions", () => {
  it("of more than 80 lines say above them why", () => {
    const silent = FILES.flatMap((file) =>
      longFunctions(readFileSync(file, "utf8")).map((line) => `${file}: ${line}`),
    );
    expect(silent).toEqual([]);
  });

  it("would be named where they stand", () => {
    const long = (above: string, lines: number) =>
      `// É\nconst a = 1;\n${above}function b() {\n${"  a;\n".repeat(lines - 2)}}\n`;
    expect(longFunctions(long("", 81))).toEqual(["function b() {"]);
    expect(longFunctions(long("/** Longer than most: a list. */\n", 81))).toEqual([]);
    expect(longFunctions(long("/** A list. */\n", 81))).toEqual(["function b() {"]);
    expect(longFunctions(long("", 80))).toEqual([]);
  });
});
