import * as text from "../../sentences/made/set-up-page";
import type { ColumnGuess } from "../../wire/columns";

/** Columns that want the same of the person. */
export interface ColumnGroup {
  readonly title: string;
  readonly columns: readonly ColumnGuess[];
  readonly open: boolean;
}

/** So few columns that nothing uses are all shown at once. */
const ALL_SHOWN = 4;

/** Whether a column is one that the person is asked about. */
export function isOpen({ sure }: ColumnGuess): boolean {
  return sure === "guessed" || sure === "likely";
}

/** Those that are not asked about: first those left alone, which may be missed, then those that are sure. */
export function columnGroups(columns: readonly ColumnGuess[]): readonly ColumnGroup[] {
  const of = (...kinds: readonly ColumnGuess["sure"][]) =>
    columns.filter(({ sure }) => kinds.includes(sure));
  const left = of("not used");
  const few = left.length <= ALL_SHOWN;
  return [
    { title: text.groupLeft(), columns: left, open: few },
    { title: text.groupSure(), columns: of("told", "sure", "scions"), open: false },
  ].filter((group) => group.columns.length > 0);
}

/** How sure the reading is, in words; a guess is asked about instead. */
export const SURE_WORDS: Readonly<Partial<Record<ColumnGuess["sure"], () => string>>> = {
  told: text.sureTold,
  sure: text.sureSure,
  "not used": text.sureLeft,
  scions: text.sureScions,
};

/** What more than one column is read as, each with the headers. */
export function readTwice(
  readings: readonly { readonly header: string; readonly readAs: string | null }[],
): readonly { readonly readAs: string; readonly headers: readonly string[] }[] {
  const headersOf = new Map<string, string[]>();
  for (const { header, readAs } of readings) {
    if (readAs === null) continue;
    const headers = headersOf.get(readAs) ?? [];
    headersOf.set(readAs, headers);
    headers.push(header);
  }
  return [...headersOf]
    .filter(([, headers]) => headers.length > 1)
    .map(([readAs, headers]) => ({ readAs, headers }));
}
