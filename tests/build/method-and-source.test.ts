import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

const FOLDER = "src/core/statistics";

/** Doc comments that stand right above an exported function or value. */
function docsOf(code: string): string[] {
  const docs = code.matchAll(/\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\n(?=export (?:function|const)\b)/g);
  return [...docs].map(([, text = ""]) => text.replace(/\n \*/g, "\n"));
}

/** Whether a model says how it works and by whom: a work with its year, or that it is ours. */
function isSourced(code: string): boolean {
  return docsOf(code).some(
    (doc) =>
      /\n Method: \S/.test(doc) && /\n Source: (?:ours\b|[\s\S]*\((?:1[7-9]|20)\d\d\))/.test(doc),
  );
}

const MODELS = readdirSync(FOLDER)
  .map((name) => `${FOLDER}/${name}`)
  .map((file) => ({ file, code: readFileSync(file, "utf8") }))
  .filter(({ code }) => /^export function/m.test(code));

describe("models of core/statistics", () => {
  it("are there", () => {
    expect(MODELS.length).toBeGreaterThan(20);
  });

  it.each(MODELS)("name their method and its source: $file", ({ code }) => {
    expect(isSourced(code)).toBe(true);
  });

  it("would be named where either is missing, or stands at something that is not handed on", () => {
    const [method, source] = [" * Method: sums.\n", " * Source: Bayes, T. (1763). An essay.\n"];
    const model = (doc: string, kept = "export ") =>
      `/**\n * A share.\n${doc} */\n${kept}function share() {}\nexport function other() {}\n`;
    expect(isSourced(model(method + source))).toBe(true);
    expect(isSourced(model(`${method} * Source: ours.\n`))).toBe(true);
    expect(
      [method, source, "", `${method} * Source: a book\n`].map((doc) => isSourced(model(doc))),
    ).toEqual([false, false, false, false]);
    expect(isSourced(model(method + source, ""))).toBe(false);
  });
});
