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
  const troubles = [
    ...built.faults.map(ofTimetable),
    ...records.troubles,
    ...batchTroubles(records, built.timetable, asOf),
  ].sort(byCost);
  const rows = troubles.map((one) => [
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
  const { heading, used, leftOut, blank } = records.rows;
  rows.push([
    null,
    null,
    null,
    `${heading + used + leftOut + blank} rows in the range`,
    `${used} used, ${leftOut} left out, ${blank} blank, ${heading} down to the header`,
    null,
  ]);
  return { columns: COLUMNS, rows, remark: null };
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
