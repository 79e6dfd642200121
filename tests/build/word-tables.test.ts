import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { wordTables } from "../../src/build/word-tables";

describe("the tables that are made from the files of words", () => {
  const readme = readFileSync("README.md", "utf8");

  it.each([...wordTables(readme)])("%s is as npm run words writes it: run that", (path, text) => {
    expect(readFileSync(path, "utf8")).toBe(text);
  });

  it("names the languages in README.md, whatever it named before", () => {
    const other = readme.replace("Headers in English, French", "Headers in Dutch, English");
    expect(other).not.toBe(readme);
    expect(wordTables(other).get("README.md")).toBe(readme);
  });
});
