import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { isNonsense } from "../support/nonsense";

const FOLDER = "tests/sidebar/golden";

/**
 * Compares markup with the golden file of that name. A missing file is written, to be looked at and
 * kept; where nobody looks (CI) it fails. Of nonsense nothing is compared: the files hold whole pages.
 */
export function expectGolden(name: string, markup: string): void {
  if (isNonsense) return;
  const path = join(FOLDER, `${name}.html.golden`);
  if (!existsSync(path)) {
    if (process.env.CI) throw new Error(`${path} is missing`);
    mkdirSync(FOLDER, { recursive: true });
    writeFileSync(path, markup);
  }
  expect(markup).toBe(readFileSync(path, "utf8"));
}

/** The markup of an element, one element or text a line, with what is chosen in lists. */
export function markupOf(page: Page, selector: string): Promise<string> {
  return page.evaluate((where) => {
    const escaped = (text: string) =>
      text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/"/g, "&quot;");
    const lines = (node: Node, indent: string): string[] => {
      if (node instanceof Text) return node.data === "" ? [] : [`${indent}"${escaped(node.data)}"`];
      if (!(node instanceof Element)) return [];
      const attributes = [...node.attributes].map(
        ({ name, value }) => ` ${name}="${escaped(value)}"`,
      );
      if (node instanceof HTMLSelectElement) attributes.push(` chosen="${escaped(node.value)}"`);
      const tag = node.tagName.toLowerCase();
      const children = [...node.childNodes].flatMap((child) => lines(child, `${indent}  `));
      const start = `${indent}<${tag}${attributes.join("")}>`;
      return children.length === 0 ? [start] : [start, ...children, `${indent}</${tag}>`];
    };
    const found = document.querySelector(where);
    if (found === null) throw new Error(`nothing fits ${where}`);
    return `${lines(found, "").join("\n")}\n`;
  }, selector);
}
