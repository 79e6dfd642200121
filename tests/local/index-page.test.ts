import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { indexPage } from "../../src/local/page/index-page";
import * as text from "../../src/sentences/made/local-page";

const html = readFileSync("src/local/page/browser/index.html", "utf8");

it("holds no words of its own: text and labels are named, and filled from the messages", () => {
  const shown = [
    ...html.matchAll(/>([^<>]*\p{L}[^<>]*)</gu),
    ...html.matchAll(/(?:aria-label|title|placeholder)="([^"]*)"/g),
  ].map(([, words = ""]) => words.trim());
  expect(shown.length).toBeGreaterThan(10);
  for (const words of shown) expect(words).toMatch(/^\{\{\w+\}\}$/);
  const filled = indexPage(html);
  expect(filled).not.toContain("{{");
  expect(filled).toContain(`<title>${text.page()}</title>`);
});

it("ends where the page names a text that there is not", () => {
  expect(() => indexPage("<p>{{nowhere}}</p>")).toThrow("index.html: there is no text nowhere");
});
