import * as text from "../sentences/made/report";
import type { WordAsked } from "./columns-read";
import { titled } from "./columns-section";
import { textTable } from "./tables";
import { wrapText } from "./wrap-text";

/** The words in cells that the add-in asks about in Set up, and the words by which they are settled. */
export function wordsSection(words: readonly WordAsked[], width: number): string {
  const header = [text.column(), text.word(), text.batches(), text.mayBe()];
  const rows = words.map(({ column, word, batches, others }) => [
    column,
    word,
    batches,
    others.join(", "),
  ]);
  const table = textTable(
    [header, ...rows].map((row) => row.map((value) => ({ value, pattern: "" }))),
    { width },
  );
  return titled(text.wordsHeading(), [
    table,
    "",
    ...toSettle(words).flatMap((line) => wrapText(line, width)),
  ]);
}

function toSettle(words: readonly WordAsked[]): readonly string[] {
  const known = words.find(({ others }) => others.length > 0) ?? words[0];
  const pair = words.find(({ isPair }) => isPair);
  const settled =
    known === undefined
      ? []
      : [text.correctWords({ word: known.word, name: known.others[0] ?? text.ourName() })];
  const apart =
    pair === undefined ? [] : [text.tellApart({ name: pair.others[0] ?? "", other: pair.word })];
  return [...settled, ...apart];
}
