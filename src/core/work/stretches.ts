import {
  type Cell,
  cellText,
  type DayOrder,
  dayColumnReader,
  isBlank,
  settleYear,
  shortened,
} from "../cells";
import type { CivilDay } from "../dates";
import type { HeadedTable, RowFault } from "../tables";
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
 * @returns null for a row without days; what is wrong with one
 */
export function stretchReader<Field extends string>(
  table: HeadedTable<Field>,
  {
    from,
    to,
    habits: { asOf, localeOrder, openEnd },
  }: { readonly from: NoInfer<Field>; readonly to: NoInfer<Field>; readonly habits: StretchHabits },
): (row: number) => DayStretch | null | RowFault {
  const cells = (): Cell[] =>
    table.rows.flatMap((row) => [table.cell(row, from), table.cell(row, to)]);
  const reader = dayColumnReader(cells, { usualOrder: () => localeOrder, asOf });
  const readDay = (cell: Cell): CivilDay | null | RowFault => {
    if (isBlank(cell)) return null;
    const reading = reader.read(cell);
    const day =
      reading.kind === "day"
        ? reading.day
        : reading.kind === "undated"
          ? settleYear(reading, { neighbours: [asOf], sectionYear: null, asOf })
          : null;
    return day ?? { code: "not-a-day", found: shortened(cellText(cell)) };
  };
  return (row) => {
    const first = readDay(table.cell(row, from));
    const last = readDay(table.cell(row, to));
    if (isFault(first)) return first;
    if (isFault(last)) return last;
    if (first === null && last === null) return null;
    if (first !== null && last !== null && last < first) {
      return { code: "ends-before-it-begins" };
    }
    return { from: first, to: last ?? (openEnd ? null : first) };
  };
}

function isFault(read: CivilDay | null | RowFault): read is RowFault {
  return typeof read === "object" && read !== null;
}
