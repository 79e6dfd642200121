import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";

const SIDEBAR = "src/sidebar";

/** The order of the sections, as a day goes. One that is not named stands before Check, by the letters. */
const FIRST = ["today", "ahead", "takes", "orders"];
const LAST = ["check", "set-up"];

/**
 * The sidebar's list of sections by its path, as it follows from the folders: ahead/ with ahead-section.ts is
 * the section "ahead", made by aheadSection, and its tab says what `page.ahead` says.
 *
 * @param keys names of the folders with a section
 */
export function sectionList(keys = foldersWithSection()): ReadonlyMap<string, string> {
  const between = keys.filter((key) => ![...FIRST, ...LAST].includes(key)).sort();
  const order = [...FIRST, ...between, ...LAST].filter((key) => keys.includes(key));
  const imports = [
    ...keys.map((key) => `import { ${camel(key)}Section } from "./${key}/${key}-section";\n`),
    'import type { ListedSection } from "./section";\n',
  ];
  const pathOf = (line: string) => line.slice(line.indexOf('"'));
  return new Map([
    [
      `${SIDEBAR}/sections.table.ts`,
      `// Made by npm run sentences from the folders; a test holds it equal.

import * as text from "../sentences/made/page";
${imports.sort((one, other) => (pathOf(one) < pathOf(other) ? -1 : 1)).join("")}
/** The page's sections in their order, the only list of them. */
export const SECTIONS = [
${order
  .map((key) => `  { key: "${key}", title: text.${camel(key)}, section: ${camel(key)}Section },\n`)
  .join("")}] as const satisfies readonly ListedSection[];
`,
    ],
  ]);
}

/** @example camel("set-up") // "setUp" */
function camel(key: string): string {
  return key.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());
}

function foldersWithSection(): string[] {
  return readdirSync(SIDEBAR).filter((key) => existsSync(join(SIDEBAR, key, `${key}-section.ts`)));
}
