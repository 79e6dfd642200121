import { type Cell, cellText, type DayOrder, shortened } from "../cells";
import type { CivilDay } from "../dates";
import type { RowFault } from "../tables";
import type { TimeOff } from "./crew";
import type { CrewRow } from "./crew-rows";
import type { CrewTable } from "./crew-table";
import { offBetween, offReader } from "./read-off";
import { readWeek, type Week } from "./read-week";

type Times = Pick<CrewRow, "weeks" | "off">;

/** Reads on which days a row's person is there. */
export function timesReader(
  { rows, off: columns, cells, at }: CrewTable,
  habits: { readonly asOf: CivilDay; readonly localeOrder: DayOrder | null },
): (row: number) => Times | RowFault {
  const offIn = (row: number) =>
    columns.map(({ from, to }): [Cell, Cell] => [at(row, from), at(row, to)]);
  const readOff = offReader(() => rows.flatMap((row) => offIn(row).flat()), habits);
  return (row) => {
    const weeks: Week[] = [];
    const off: TimeOff[] = [];
    for (const cell of cells(row, "days")) {
      const week = readWeek(String(cell));
      if (week === null) return { code: "not-weekdays", found: shortened(cellText(cell)) };
      weeks.push(week);
    }
    for (const [index, pair] of offIn(row).entries()) {
      const read = offBetween(readOff, pair, columns[index]?.openEnd === true);
      if ("code" in read) return read;
      off.push(...read.stretches);
      if (read.week !== null) weeks.push(read.week);
    }
    return { weeks, off };
  };
}
