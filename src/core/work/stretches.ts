import { type Cell, cellText, isBlank } from "../cells/cell";
import type { HeadedTable } from "../cells/headed-table";
import { quoted } from "../cells/quoted";
import { errorShown, isLoading } from "../cells/upstream";
import type { CivilDay } from "../dates/civil-day";
import { type DayOrder, dayColumnReader } from "../dates/read-day-column";
import { settleYear } from "../dates/settle-year";
import { InputError } from "../input-error";
import type { DayStretch } from "./crew";

export interface StretchHabits {
  readonly asOf: CivilDay;
  readonly localeOrder: DayOrder | null;
  /** Whether a first day alone has no end; else it is one day. */
  readonly openEnd: boolean;
}

/**
 * A reader of stretches of days from two columns of a table. A year that is not written is the one
 * nearest to the as-of day.
 *
 * @returns null for a row without days; a text that says what is wrong with one
 */
export function stretchReader<Field extends string>(
  table: HeadedTable<Field>,
  from: NoInfer<Field>,
  to: NoInfer<Field>,
  { asOf, localeOrder, openEnd }: StretchHabits,
): (row: number) => DayStretch | null | string {
  const cells = (): Cell[] =>
    table.rows.flatMap((row) => [table.cell(row, from), table.cell(row, to)]);
  const reader = dayColumnReader(cells, { usualOrder: () => localeOrder, asOf });
  const readDay = (cell: Cell): CivilDay | null | string => {
    if (isBlank(cell)) return null;
    const reading = reader.read(cell);
    const day =
      reading.kind === "day"
        ? reading.day
        : reading.kind === "undated"
          ? settleYear(reading, { neighbours: [asOf], sectionYear: null, asOf })
          : null;
    return day ?? `${quoted(cellText(cell))} is no day that can be read`;
  };
  return (row) => {
    const first = readDay(table.cell(row, from));
    const last = readDay(table.cell(row, to));
    if (typeof first === "string") return first;
    if (typeof last === "string") return last;
    if (first === null && last === null) return null;
    if (first !== null && last !== null && last < first) return "it ends before it begins";
    return { from: first, to: last ?? (openEnd ? null : first) };
  };
}

/** A row whose cells are not calculated yet would silently lack something. */
export function mustBeReady<Field extends string>(
  argument: string,
  table: HeadedTable<Field>,
  row: number,
): void {
  for (const field of Object.keys(table.columnOf) as Field[]) {
    const cell = table.cell(row, field);
    const error = errorShown(cell);
    if (error === null && !isLoading(cell)) continue;
    const what = error === null ? "is still loading" : `shows ${error}`;
    throw new InputError("not-ready-yet", `a cell of ${argument} row ${row + 1} ${what}`);
  }
}
