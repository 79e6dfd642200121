import { lazily } from "../lazily";
import { english } from "./english";
import { wordFiles } from "./language-files.table";
import type { LanguageText, TabKind, TablesText } from "./language-text";
import { type LanguageWords, languageWords } from "./language-words";

/** The file of every language, as people edit it; listed by npm run words. */
export const languageTexts: readonly LanguageText[] = Object.values(wordFiles);

/** Every language whose words are known. A table may mix them. */
export const everyLanguage = lazily<readonly LanguageWords[]>(() =>
  languageTexts.map(languageWords),
);

/** The same at once, for checks and tests. */
export const allLanguages: readonly LanguageWords[] = /* @__PURE__ */ everyLanguage();

/** The words of every language for one thing. */
export function everyWord(pick: (words: LanguageWords) => readonly string[]): readonly string[] {
  return everyLanguage().flatMap(pick);
}

/** The same as a set, which is made when it is first asked. */
export function wordSet(pick: (words: LanguageWords) => readonly string[]): WordSet {
  const set = lazily(() => new Set(everyWord(pick)));
  return { has: (word) => set().has(word) };
}

export type WordSet = Pick<ReadonlySet<string>, "has">;

/** The words of every language for one thing, as alternatives in a pattern; the longest first. */
export function wordPattern(pick: (words: LanguageWords) => readonly string[]): string {
  return [...new Set(everyWord(pick))].sort((one, other) => other.length - one.length).join("|");
}

/** Headers by column of one of the smaller tables, in every language. */
export type TableWords<Table extends keyof TablesText> = Readonly<
  Record<keyof TablesText[Table], readonly string[]>
>;

/** The headers of one of the smaller tables in every language, by column, in normal form. */
export function tableWords<Table extends keyof TablesText>(table: Table): TableWords<Table> {
  const columns = Object.keys(english.tables[table]) as (keyof TablesText[Table])[];
  const lists = columns.map((column) => [
    column,
    everyWord((words) => (words.tables[table] as TableWords<Table>)[column]),
  ]);
  return Object.fromEntries(lists) as TableWords<Table>;
}

/** What a tab with such a table may be called, in normal form, the likeliest first. */
export function tabNames(kind: TabKind): readonly string[] {
  return everyWord(({ tabs }) => tabs[kind]);
}
