import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { NONSENSE_BRACKET, nonsenseModule } from "../../src/local/nonsense";

/** The tests that leave something out where every message is nonsense, and what. */
const LEFT_OUT: Readonly<Record<string, string>> = {
  "tests/build/generated-pages.test.ts": "whole pages of English are compared with nothing",
  "tests/checks/year/year.test.ts": "a whole diary of English is compared with nothing",
  "tests/sidebar/axe-violations.ts": "a name need not begin with the words on its button",
  "tests/sidebar/golden.ts": "whole pages of English are compared with nothing",
  "tests/sidebar/page-file.test.ts": "size and letters are those of the page that is pushed",
  "tests/sidebar/person-sheet.test.ts": "so many pages of paper are those of English",
};

describe("messages of nonsense", () => {
  it("say their name and their facts", () => {
    const module = nonsenseModule("src/sentences/made/days.ts") ?? "";
    expect(module).toContain(`"${NONSENSE_BRACKET}days.window"`);
    expect(module).toContain('" from=" + d.from + " by=" + d.by');
    expect(module).not.toContain("Jan");
  });

  it("stand for sentences alone", () => {
    expect(nonsenseModule("src/wording/days.ts")).toBeNull();
  });

  it("let no test be left out but those of whole pages", () => {
    const users = readdirSync("tests", { recursive: true, encoding: "utf8" })
      .filter((name) => name.endsWith(".ts"))
      .map((name) => join("tests", name))
      .filter((path) => /\bisNonsense\b/.test(readFileSync(path, "utf8")));
    expect(users.sort()).toEqual([...Object.keys(LEFT_OUT), "tests/support/nonsense.ts"]);
  });
});
