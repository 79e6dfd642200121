import { readdirSync, readFileSync } from "node:fs";
import { join, sep } from "node:path";
import { describe, expect, it } from "vitest";
import { importsOf, targetOf } from "../../src/build/imports-of";
import { NONSENSE_BRACKET } from "../../src/local/nonsense";

/**
 * Every example in a comment is one line, `call // what it answers`, and is run here. It may use what its
 * file exports, what the files that it imports export, and what core does. A number is held to the
 * digits that are written.
 */
const EXAMPLE = /@example (.+?)(?: \*\/)?$/gm;

const FILES = ["core", "door", "functions", "wording", "sidebar", "local"]
  .flatMap((folder) =>
    readdirSync(`src/${folder}`, { recursive: true, encoding: "utf8" })
      .filter((name) => name.endsWith(".ts"))
      .map((name) => join("src", folder, name).split(sep).join("/")),
  )
  .filter((file) => readFileSync(file, "utf8").includes("@example"));

interface Example {
  readonly file: string;
  readonly text: string;
}

const EXAMPLES: readonly Example[] = FILES.flatMap((file) =>
  [...readFileSync(file, "utf8").matchAll(EXAMPLE)].map(([, text = ""]) => ({ file, text })),
);

type Names = Readonly<Record<string, unknown>>;

async function exportsOf(path: string): Promise<Names> {
  return (await import(/* @vite-ignore */ `../../${path}`)) as Names;
}

/** All that an example in a file may name. */
async function namesIn(file: string): Promise<Names> {
  const imported = importsOf(file).flatMap((one) => targetOf(one) ?? []);
  const paths = ["src/core/index", ...imported, file.replace(/\.ts$/, "")];
  const names = await Promise.all([...new Set(paths)].map(exportsOf));
  return Object.assign({}, ...names) as Names;
}

/** What a piece of code comes to. */
function ran(code: string, names: Names): unknown {
  return new Function(...Object.keys(names), `"use strict"; return (${code});`)(
    ...Object.values(names),
  );
}

/** A value with its numbers to as many digits as another has, which was written by hand. */
function toDigitsOf(value: unknown, written: unknown): unknown {
  if (typeof value === "number" && typeof written === "number") {
    const digits = String(written).split(".")[1]?.length ?? 0;
    return Number.isInteger(value) ? value : Number(value.toFixed(digits));
  }
  if (typeof value !== "object" || value === null) return value;
  if (typeof written !== "object" || written === null) return value;
  const other = written as Names;
  if (Array.isArray(value)) return value.map((one, index) => toDigitsOf(one, other[index]));
  return Object.fromEntries(
    Object.entries(value).map(([key, one]) => [key, toDigitsOf(one, other[key])]),
  );
}

describe("examples in comments", () => {
  it("are found", () => {
    expect(EXAMPLES.length).toBeGreaterThan(40);
  });

  it.each(EXAMPLES)("$file: $text", async ({ file, text }) => {
    const [call = "", ...answer] = text.split(" // ");
    const names = await namesIn(file);
    const written = ran(answer.join(" // "), names);
    const found = ran(call, names);
    // npm run check:nonsense: what an example shows of a sentence is no sentence then.
    if (JSON.stringify(found)?.includes(NONSENSE_BRACKET)) return;
    expect(toDigitsOf(found, written)).toEqual(written);
  });
});

/** Functions that other files use, without a comment right above; those of a sheet say theirs in their help. */
function withoutComment(code: string): string[] {
  return [
    ...code.matchAll(/(?<=(.*)\n)export (?:async )?(?:function (\w+)|const (\w+)\b.*=>)/g),
  ].flatMap(([line, above, name, other]) =>
    above?.trim().endsWith("*/") || line.includes("functionOf(") ? [] : [name ?? other ?? ""],
  );
}

describe("public functions", () => {
  it.each(["door", "functions", "wording", "sidebar", "local"])(
    "of src/%s say what they do",
    (folder) => {
      const files = readdirSync(`src/${folder}`, { recursive: true, encoding: "utf8" })
        .filter((name) => name.endsWith(".ts"))
        .map((name) => `src/${folder}/${name}`);
      expect(files.length).toBeGreaterThan(5);
      const silent = files.flatMap((file) =>
        withoutComment(readFileSync(file, "utf8")).map((name) => `${file} ${name}`),
      );
      expect(silent).toEqual([]);
    },
  );

  it("would be named where they say nothing", () => {
    const code = [
      "/** Says. */\nexport function told() {}\n\nexport function silent() {}",
      "export const quiet = needed<string>(() => 1);\nexport const list = [1];",
      "export const inTheSheet = functionOf({}, () => 1);",
    ].join("\n");
    expect(withoutComment(code)).toEqual(["silent", "quiet"]);
  });
});

describe("the digits of an example", () => {
  it("are those that are written, and no fewer", () => {
    expect(toDigitsOf({ low: 0.53129 }, { low: 0.5313 })).toEqual({ low: 0.5313 });
    expect(toDigitsOf(0.53129, 0.5312)).not.toBe(0.5312);
    expect(toDigitsOf([1, "a"], [1, "a"])).toEqual([1, "a"]);
  });
});
