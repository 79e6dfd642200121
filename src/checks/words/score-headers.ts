import { type ColumnRead, columnsRead } from "./columns-read";
import { type HeaderLine, headerLines, type Part } from "./corpus";
import { alsoRight, keysOf } from "./meanings";
import { localeOf, officeTable } from "./office-table";
import type { Outcome, Scored } from "./outcome";

/** Every header of the corpus, read in its table. */
export function scoredHeaders(part: Part): readonly Scored[] {
  const tables = new Map<string, HeaderLine[]>();
  for (const line of headerLines(part)) {
    tables.set(line.table, [...(tables.get(line.table) ?? []), line]);
  }
  return [...tables.values()].flatMap((lines) => {
    const [{ kind, language }] = lines as [HeaderLine];
    const read = columnsRead(kind, officeTable(lines), localeOf(language));
    return lines.map((line, column) => scoredHeader(line, read[column] as ColumnRead));
  });
}

function scoredHeader(line: HeaderLine, read: ColumnRead): Scored {
  const { table, kind, language, header, meaning, common, examples } = line;
  const isBlank = header !== "" && examples.every((cell) => cell.trim() === "");
  return {
    kind,
    language,
    word: header,
    means: meaning,
    readAs: read.key ?? "",
    outcome: headerOutcome({ ...read, isBlank }, keysOf(kind, meaning), alsoRight(meaning)),
    common,
    at: table,
  };
}

/**
 * What became of a header. A column that is none of ours and has no cell is right to be left alone without a
 * word in Check: nothing is left out of any answer, and Set up shows it among those not used
 * (tests/workbook/set-up.test.ts).
 *
 * @param wanted keys that mean what the header means; none where the product has no such column
 */
export function headerOutcome(
  { key, asked, named, isBlank = false }: ColumnRead & { readonly isBlank?: boolean },
  wanted: readonly string[],
  also: readonly string[] = [],
): Outcome {
  if (asked) return "asked";
  if (key !== null && also.includes(key)) return "right";
  if (key !== null) return wanted.includes(key) ? "right" : "wrong";
  if (!named && !(isBlank && wanted.length === 0)) return "silent";
  return wanted.length === 0 ? "right" : "asked";
}
