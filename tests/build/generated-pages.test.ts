import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { generatedPages } from "../../src/build/generated-pages";
import { registry } from "../../src/functions/index";
import { buildAddIn } from "../support/built-add-in";
import { isNonsense } from "../support/nonsense";

const pages = await generatedPages(buildAddIn().read("Code.js"));
const page = pages.get("src/functions/README.md") ?? "";

// A formatter had been at two pages, so that whoever ran npm run docs got 606 changed lines.
describe("the generated pages", () => {
  it.skipIf(isNonsense).each([...pages])(
    "%s is committed as npm run docs writes it: run that",
    (path, text) => {
      expect(readFileSync(path, "utf8")).toBe(text);
    },
  );
});

describe("the function reference", () => {
  // The first rate of TAKE_RATE stood where people look for what a column holds.
  it.each(registry.map(({ name }) => name))("heads the example of %s with words", (name) => {
    const section = page.split(/^## /m).find((one) => one.startsWith(`${name}\n`)) ?? "";
    const heads = /^\|(.*)\|$/m.exec(section)?.[1]?.split("|") ?? [];
    expect(heads.length).toBeGreaterThan(0);
    for (const head of heads) expect(head).toMatch(/[A-Za-z]{2}/);
  });
});
