import type { Cell } from "../../../src/core/cells/cell";
import { stateFinder } from "../../../src/core/projection/batch-state";
import { builtInTimetable } from "../../../src/core/timetable/read-timetable";
import type { Method } from "../../../src/core/timetable/timetable";
import { day } from "../../support/days";
import { reading } from "../records/reading";

export const COCOA = builtInTimetable().methods[0] as Method;

/** The step columns of the built-in method. */
export const STEP_COLUMNS = [
  ...["Sown", "Seeds sown", "Germination day", "Germinated", "Grafted on", "Grafts made"],
  ...["First release", "Bud break", "Take count day", "Takes", "First flush", "Flush hardening"],
  ...["Branching", "Union closed", "Ready on", "Ready plants"],
] as const;
type Column = (typeof STEP_COLUMNS)[number];
type Facts = Partial<Record<Column | "Culled" | "Dispatched" | "Closed" | "Variety", Cell>>;

/** The index of a step in the built-in method. */
export function stepNumber(name: string): number {
  const index = COCOA.steps.findIndex((step) => step.name === name);
  if (index === -1) throw new Error(`no step ${name}`);
  return index;
}

/** Records of one batch, and a closed one below it, with a column for every step of the method. */
function recordsOf(facts: Facts, asOf = "2026-11-25") {
  const header = ["Batch", "Variety", "Place", ...STEP_COLUMNS, "Culled", "Dispatched", "Closed"];
  const rowOf = (cells: Readonly<Record<string, Cell>>) => header.map((name) => cells[name] ?? "");
  // A name and a place alone could be a note, were there not a full row named in the same shape.
  const other = {
    ...{ Batch: "C", Variety: "Alba", Place: "Bay 2", Sown: "2023-05-01", "Seeds sown": 50 },
    ...{ "Grafted on": "2023-08-01", "Grafts made": 40, Closed: "yes" },
  };
  const rows = [rowOf({ ...facts, Batch: "B", Place: "Bay 2" }), rowOf(other)];
  return reading([header, ...rows], { asOf: day(asOf) });
}

/** Where that batch stands. */
export function stateOf(facts: Facts, asOf = "2026-11-25", method = COCOA) {
  const records = recordsOf(facts, asOf);
  const [batch] = records.batches;
  if (batch === undefined) throw new Error("the row is no batch");
  return stateFinder(records, day(asOf))(batch, method);
}
