import { type CivilDay, linesOf, type TargetKey } from "../../core";
import { dayWords } from "../../wording/days";
import type { LineAlready } from "../../wording/writing-codes";
import { WritingError } from "../host/writing-error";
import type { RecordsNow } from "../reading/records-tab";
import { columnReadAs, type TableCell } from "../reading/table-columns";
import { valuesWith } from "../tables/values-with";
import type { TaskCells } from "./task-cells";

/**
 * Where a task is recorded in records of one line a job: in the line that it has on that day
 * already, so that what is blank there is filled; else in a new line below.
 *
 * All cells are null when the tab holds no log.
 *
 * @throws WritingError when a line below the log would not be read as one
 */
export function logTarget(
  now: RecordsNow,
  {
    batch,
    step,
    day,
  }: {
    readonly batch: string;
    readonly step: { readonly name: string; readonly key: string };
    readonly day: CivilDay | null;
  },
): TaskCells {
  const { records } = now;
  const table = records.tables.findIndex(({ kind }) => kind === "log");
  if (table === -1) return NOWHERE;
  const lines = linesOf(records, batch, step.key).filter((line) => line.table === table);
  const same = lines.find((line) => line.day === day);
  const row = same?.row ?? lastRow(now, table) + 1;
  const cellOf = (key: TargetKey): TableCell | null => {
    const found = columnReadAs(records, table, key);
    return found === null ? null : { row, ...found };
  };
  const cells = {
    table,
    day: cellOf("event eventDay"),
    count: cellOf("event eventCount"),
    person: cellOf("event eventPerson"),
    note: cellOf("fact note"),
  };
  const name = cellOf("fact batch");
  const what = cellOf("event eventStep");
  if (same !== undefined) return { ...cells, name, alsoWrite: [], secondLine: null };
  if (name === null || what === null) return NOWHERE;
  const alsoWrite = [
    { at: name, text: batch },
    { at: what, text: step.name },
  ];
  mustBeRead(now, alsoWrite, step.key);
  const last = lines[lines.length - 1];
  return {
    ...cells,
    name: null,
    alsoWrite,
    secondLine:
      last === undefined
        ? null
        : lineAlready({ step: step.name, batch, row: String(last.row) }, last),
  };
}

const NOWHERE: TaskCells = {
  table: 0,
  name: null,
  day: null,
  count: null,
  person: null,
  note: null,
  alsoWrite: [],
  secondLine: null,
};

function lineAlready(
  line: { readonly step: string; readonly batch: string; readonly row: string },
  { day, count }: { readonly day: CivilDay | null; readonly count: number | null },
): LineAlready {
  if (day === null) return { code: "lineUndated", ...line };
  const dated = { ...line, day: dayWords(day) };
  return count === null
    ? { code: "lineAlready", ...dated }
    : { code: "lineCounted", ...dated, count };
}

/** Last row, from 1, in which a column of the table holds something. */
function lastRow({ records, values }: RecordsNow, table: number): number {
  const columns = records.columns.filter((one) => one.table === table).map(({ column }) => column);
  let row = values.length;
  while (row > 0 && columns.every((column) => (values[row - 1]?.[column] ?? "") === "")) row -= 1;
  return row;
}

/** Another table may stand below the log, which would swallow the line. */
function mustBeRead(now: RecordsNow, cells: TaskCells["alsoWrite"], key: string): void {
  const [{ at, text } = { at: null, text: "" }] = cells;
  if (at === null) return;
  const values = valuesWith(
    now.values,
    cells.map((cell) => ({ ...cell.at, after: cell.text })),
  );
  if (linesOf(now.readAs(values), text, key).some((line) => line.row === at.row)) return;
  throw new WritingError({ code: "lineNotRead", row: String(at.row) });
}
