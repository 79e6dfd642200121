import * as text from "../sentences/made/report";
import type { ColumnRead, ColumnsRead } from "./columns-read";
import type { SheetCell } from "./sheet-cells";
import { textTable } from "./tables";
import { wrapText } from "./wrap-text";

const SURE: Readonly<Record<ColumnRead["sure"], () => string>> = {
  told: text.columnTold,
  sure: text.columnSure,
  likely: text.columnLikely,
  guessed: text.columnLikely,
  "not used": text.columnLeft,
  scions: text.columnCompares,
};
const SETTLED: ReadonlySet<ColumnRead["sure"]> = new Set(["told", "sure", "scions"]);
/** A value from a column is cut here, so that three of them fit a line. */
const LONGEST_SAMPLE = 14;

/** How each column of the records was read, and the words by which another reading is asked for. */
export function columnsSection({ columns, names }: ColumnsRead, width: number): string {
  const header = [text.header(), text.readAs(), text.howSure(), text.mayBe(), text.suchAs()];
  const severalTabs = new Set(columns.map(({ tab }) => tab)).size > 1;
  const rows = columns.map(({ tab, ...one }) => [
    ...(severalTabs ? [tab] : []),
    one.header,
    one.readAs ?? "",
    isAskedAbout(one) ? text.columnLeft() : SURE[one.sure](),
    one.sure === "sure" ? "" : one.others.join(", "),
    one.samples.map(cut).join(", "),
  ]);
  const cells = [[...(severalTabs ? [text.tab()] : []), ...header], ...rows].map((row) =>
    row.map((value): SheetCell => ({ value, pattern: "" })),
  );
  const table = textTable(cells, { width });
  const below = toCorrect(columns, names).flatMap((line) => wrapText(line, width));
  return titled(text.columnsHeading(), [table, ...below]);
}

/** A section of the report under its heading. */
export function titled(heading: string, lines: readonly string[]): string {
  return [heading, "═".repeat(heading.length), ...lines, ""].join("\n");
}

/** One that is likely something, but not read as that. */
function isAskedAbout({ readAs, sure }: Omit<ColumnRead, "tab">): boolean {
  return readAs === null && (sure === "likely" || sure === "guessed");
}

/** Nothing where every column is sure: a table that is read whole asks for no look. */
function toCorrect(columns: readonly ColumnRead[], names: readonly string[]): readonly string[] {
  const open = columns.filter(({ sure }) => !SETTLED.has(sure));
  const [first] = open.filter(({ others }) => others.length > 0);
  const column = first ?? open[0];
  if (column === undefined) return [];
  const used = new Set(columns.map(({ readAs }) => readAs));
  const free = names.find((name) => !used.has(name));
  const example = { name: first?.others[0] ?? free ?? "", header: column.header };
  return ["", text.correctColumns(example), text.columnNames({ names: names.join(", ") })];
}

function cut(sample: string): string {
  return sample.length <= LONGEST_SAMPLE ? sample : `${sample.slice(0, LONGEST_SAMPLE - 1)}…`;
}
