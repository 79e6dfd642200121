import type { Records, Timetable } from "../core";
import { openDoor } from "../door/index";
import type { PersonTab } from "./person-tabs";
import type { TabCandidate } from "./sidebar-calls";
import { workbookHost } from "./workbook-host";

/** Tabs in which batches can be read, most batches first. */
export function recordTabCandidates(
  tabs: readonly PersonTab[],
  timetable: Timetable,
): readonly TabCandidate[] {
  return tabs
    .map(({ name, values }) => ({ tab: name, batches: batchesIn(values, timetable) }))
    .filter(({ batches }) => batches > 0)
    .sort((a, b) => b.batches - a.batches);
}

function batchesIn(values: PersonTab["values"], timetable: Timetable): number {
  try {
    const { batches, columns } = openDoor(workbookHost()).records(values, {
      ...{ timetable, asOf: null, columns: "" },
    });
    const named = columns.some(({ target }) => target?.kind === "fact" && target.fact === "batch");
    if (named) return batches.length;
    // A timetable has columns of steps too, but no days in them.
    const dated = batches.some(({ days }) => days.some((day) => day !== null));
    return dated && stepsOf(columns) >= FEWEST_STEPS ? batches.length : 0;
  } catch {
    // No header of batches in it: another kind of tab.
    return 0;
  }
}

/** Fewer may be chance: lists of orders and prices have columns that sound like a step. */
const FEWEST_STEPS = 2;

/**
 * How many steps have columns. A table whose batches stand under a header that is not known is
 * known by them, and the person can tell which column names the batch.
 */
function stepsOf(columns: Records["columns"]): number {
  return new Set(columns.flatMap(({ target }) => (target?.kind === "step" ? [target.key] : [])))
    .size;
}
