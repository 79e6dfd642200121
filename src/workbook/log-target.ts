import { type CivilDay, linesOf, sentenceDay } from "../core";
import type { RecordsNow } from "./records-tab";
import { columnOf, type Place } from "./table-columns";
import type { Places } from "./task-target";

/**
 * Where a task is recorded in records of one line a job: in the line that it has on that day
 * already, so that what is blank there is filled; else in a new line below.
 *
 * All places are null when the tab holds no log.
 *
 * @throws Error when a line below the log would not be read as one
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
): Places {
  const { records } = now;
  const table = records.tables.findIndex(({ kind }) => kind === "log");
  if (table === -1) return NOWHERE;
  const lines = linesOf(records, batch, step.key).filter((line) => line.table === table);
  const same = lines.find((line) => line.day === day);
  const row = same?.row ?? lastRow(now, table) + 1;
  const place = (key: string): Place | null => {
    const found = columnOf(records, table, key);
    return found === null ? null : { row, ...found };
  };
  const places = {
    table,
    day: place("event eventDay"),
    count: place("event eventCount"),
    person: place("event eventPerson"),
    note: place("fact note"),
  };
  const name = place("fact batch");
  const what = place("event eventStep");
  if (same !== undefined) return { ...places, name, alsoWrite: [], twice: null };
  if (name === null || what === null) return NOWHERE;
  const alsoWrite = [
    { place: name, text: batch },
    { place: what, text: step.name },
  ];
  mustBeRead(now, alsoWrite, step.key);
  const last = lines[lines.length - 1];
  return {
    ...places,
    name: null,
    alsoWrite,
    twice:
      last === undefined
        ? null
        : `${step.name} of ${batch} stands in row ${last.row} already: ${lineWords(last)}. Write another line?`,
  };
}

const NOWHERE: Places = {
  table: 0,
  name: null,
  day: null,
  count: null,
  person: null,
  note: null,
  alsoWrite: [],
  twice: null,
};

function lineWords({
  day,
  count,
}: {
  readonly day: CivilDay | null;
  readonly count: number | null;
}) {
  const when = day === null ? "without a day" : sentenceDay(day);
  return count === null ? when : `${when}, ${count} plants`;
}

/** Last row, from 1, in which a column of the table holds something. */
function lastRow({ records, values }: RecordsNow, table: number): number {
  const columns = records.columns.filter((one) => one.table === table).map(({ column }) => column);
  let row = values.length;
  while (row > 0 && columns.every((column) => (values[row - 1]?.[column] ?? "") === "")) row -= 1;
  return row;
}

/** Another table may stand below the log, which would swallow the line. */
function mustBeRead(now: RecordsNow, cells: Places["alsoWrite"], key: string): void {
  const [{ place, text } = { place: null, text: "" }] = cells;
  if (place === null) return;
  const row: unknown[] = [...(now.values[place.row - 1] ?? [])];
  for (const cell of cells) {
    for (let at = row.length; at < cell.place.column; at += 1) row.push("");
    row[cell.place.column - 1] = cell.text;
  }
  const values = [...now.values];
  values[place.row - 1] = row;
  if (linesOf(now.readAs(values), text, key).some((line) => line.row === place.row)) return;
  throw new Error(
    `A line in row ${place.row} would not be read as one of your log: write it there yourself, or move the log to a tab of its own`,
  );
}
