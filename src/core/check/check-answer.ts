import { type Answer, columns } from "../answer";
import type { CivilDay } from "../dates/civil-day";
import type { Records } from "../records/records";
import { byCost, COST, type Trouble } from "../records/trouble";
import type { BuiltTimetable, TimetableFault } from "../timetable/build-methods";
import { columnName } from "../timetable/read-timetable";
import { batchTroubles } from "./batch-troubles";

const COLUMNS = columns({
  Row: "count",
  Column: "text",
  Found: "text",
  Trouble: "text",
  "What happens": "text",
  "What to do": "text",
});

/**
 * Everything in the records that a person should look at, costliest first, and a last row that
 * counts the rows. Rows count from 1 at the top of the range.
 */
export function checkAnswer(
  records: Records,
  built: BuiltTimetable,
  asOf: CivilDay | null,
): Answer {
  const rows: (string | number | null)[][] = checkTroubles(records, built, asOf).map((one) => [
    one.row,
    one.column || null,
    one.found || null,
    one.trouble,
    one.whatHappens,
    one.whatToDo,
  ]);
  if (rows.length === 0) {
    rows.push([null, null, null, "No trouble found", "Every row is used", "Nothing"]);
  }
  const { heading, used, leftOut, notBatches, blank } = records.rows;
  const all = heading + used + leftOut + notBatches + blank;
  rows.push([null, null, null, `${all} rows in the range`, tallySentence(records), null]);
  return { columns: COLUMNS, rows, remark: null };
}

/** The troubles themselves, costliest first. */
export function checkTroubles(
  records: Records,
  built: BuiltTimetable,
  asOf: CivilDay | null,
): readonly Trouble[] {
  return [
    ...built.faults.map(ofTimetable),
    ...records.troubles,
    ...batchTroubles(records, built.timetable, asOf),
  ].sort(byCost);
}

/** What became of every row, in words. */
export function tallySentence({ rows }: Records): string {
  const { heading, used, leftOut, notBatches, blank } = rows;
  return `${used} used, ${leftOut} left out, ${notBatches} no batches (sums, headings, notes), ${heading} header and above, ${blank} blank`;
}

function ofTimetable(fault: TimetableFault): Trouble {
  return {
    row: null,
    column: `Timetable row ${fault.row}, ${columnName(fault.column)}`,
    found: fault.found,
    trouble: fault.trouble,
    whatHappens: "The method can't be used",
    whatToDo: "Correct the timetable",
    cost: COST.column,
  };
}
