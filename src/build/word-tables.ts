import { languageTexts, tabNames } from "../core/words/all-languages";
import type { TabKind } from "../core/words/language-text";
import { calendarNames } from "./calendar-names";

const MADE = "// Made by npm run words; a test holds it equal.\n";
/** The tabs that the report looks for by their names. */
const REPORT_TABS: readonly TabKind[] = ["orders", "crew", "closedDays", "places", "prices"];
const README = "README.md";
const README_LIST = /(?<=^Headers in ).*?(?=, in one row or two;)/m;

/**
 * Every table that is made from the files of words, by its path; the committed ones are exactly
 * these. Where the words themselves may not be imported, or come from a package that the built file
 * must not hold, such a table stands in for them.
 *
 * @param readme text of README.md, which names the languages
 */
export function wordTables(readme: string): ReadonlyMap<string, string> {
  const languages = listed(languageTexts.map(({ language }) => language));
  if (!README_LIST.test(readme))
    throw new Error("README.md does not say in which languages headers are read");
  return new Map([
    ["src/core/words/calendar-names.table.ts", calendarTable()],
    ["src/local/tab-names.table.ts", tabsTable()],
    [
      "src/sidebar/set-up/languages-read.table.ts",
      `${MADE}\n/** The languages in which headers are read. */\nexport const LANGUAGES_READ = ${JSON.stringify(languages)};\n`,
    ],
    [README, readme.replace(README_LIST, languages)],
  ]);
}

function calendarTable(): string {
  const tables = Object.entries(calendarNames()).map(([language, names]) =>
    member(
      language,
      Object.entries(names).map(([key, text]) => property(key, text)),
    ),
  );
  return `${MADE}// Source: the locales of date-fns that each language's file names.

import type { CalendarNames } from "./calendar-names";

/** By a language's English name. */
export const CALENDAR_NAMES: Readonly<Record<string, CalendarNames>> = {
${tables.join("")}};
`;
}

function tabsTable(): string {
  const lists = REPORT_TABS.map((kind) =>
    property(kind, [...new Set(tabNames(kind))].join(", "), "  "),
  );
  return `${MADE}
/** What the tab of each smaller table may be called: small letters, no accents, a comma between. */
export const TAB_NAMES = {
${lists.join("")}};
`;
}

function member(key: string, properties: readonly string[]): string {
  return `  ${key}: {\n${properties.join("")}  },\n`;
}

/** As the formatter breaks it: a long text stands in a line of its own. */
function property(key: string, text: string, indent = "    "): string {
  const value = JSON.stringify(text);
  const line = `${indent}${key}: ${value},`;
  return line.length <= 100 ? `${line}\n` : `${indent}${key}:\n${indent}  ${value},\n`;
}

function listed(names: readonly string[]): string {
  return `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}
