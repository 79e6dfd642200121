import { linesOf } from "../../core";
import { NOT_NEEDED } from "../host/mark";
import type { RecordsNow } from "../reading/records-tab";
import { stepKeyOf } from "../reading/step-of-task";
import { columnReadAs } from "../reading/table-columns";
import type { PersonTable, TableArea } from "./person-table";

/** The records as a table that is written: a batch's own row, or the lines of its job in a log. */
export function recordsTable(now: RecordsNow): PersonTable {
  const { sheet, door, values, records, timetable } = now;
  const areas = records.tables.map((_, table) => recordsArea(now, table));
  return {
    sheet,
    door,
    values,
    areas,
    rowsOf({ batch, task }) {
      const own = records.batches.filter(
        ({ name, table }) => name === batch && records.tables[table]?.kind === "batches",
      );
      const key = stepKeyOf(timetable, task);
      const lines = key === null ? [] : linesOf(records, batch, key);
      return [...own, ...lines].flatMap(({ table, row }) => {
        const area = areas[table];
        return area === undefined ? [] : [{ area, row }];
      });
    },
    gone: ({ task, batch }, cells) => ({ code: "taskGone", task, batch, cells }),
    beside: () => [],
  };
}

/** One of the tables in the records tab. @param table its number, see Records.tables */
export function recordsArea({ records, timetable }: RecordsNow, table: number): TableArea {
  const { headerRow = 1, headerHeight = 0 } = records.tables[table] ?? {};
  const matches = records.columns.filter((one) => one.table === table);
  return {
    headerRows: Array.from({ length: headerHeight }, (_, at) => headerRow + at),
    columns: matches.map(({ column }) => column + 1),
    nameColumn: columnReadAs(records, table, "fact batch")?.column ?? null,
    under: (wanted) =>
      matches.filter(({ header }) => header === wanted).map(({ column }) => column + 1),
    readAs({ task, after }) {
      const what = after instanceof Date || after === NOT_NEEDED ? "day" : "count";
      const step = stepKeyOf(timetable, task);
      return columnReadAs(records, table, `step ${step} ${what}`)?.column ?? null;
    },
  };
}
