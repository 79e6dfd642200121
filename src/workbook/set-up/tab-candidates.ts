import type { Records, Timetable } from "../../core";
import { openDoor } from "../../door/index";
import type { TabCandidate } from "../../wire/set-up";
import { workbookHost } from "../host/workbook-host";
import { HEAD_ROWS, type PersonTab } from "../tabs/person-tabs";

/** Of a tab with a header of batches so many rows tell whether batches stand below it. */
const ROWS_LOOKED_AT = 30;
/** Lines that a log has of a batch, about, so that it is not taken for more than a table (our choice). */
const LINES_A_BATCH = 8;

/**
 * Tabs in which batches can be read, the one with most first. Of a tab without a header of batches
 * nothing but the head is read, of the others no more than tells what they are.
 */
export function recordTabCandidates(
  tabs: readonly PersonTab[],
  timetable: Timetable,
): readonly TabCandidate[] {
  return tabs
    .flatMap((tab) => {
      const found = headIn(tab, timetable);
      return found === null ? [] : [{ tab: tab.name, ...found }];
    })
    .sort((a, b) => b.batches - a.batches)
    .map(({ tab, rows }) => ({ tab, rows }));
}

interface Head {
  /** Rows below the header. */
  readonly rows: number;
  /** About how many batches they may be of. */
  readonly batches: number;
}

/** Null where no batches stand in a tab. */
function headIn(tab: PersonTab, timetable: Timetable): Head | null {
  const door = openDoor(workbookHost());
  const read = (rows: number) =>
    door.records(tab.top(rows), { timetable, asOf: null, columns: "" });
  try {
    // Without a header it is refused, and no more is read.
    read(HEAD_ROWS);
    const records = read(ROWS_LOOKED_AT);
    if (!holdsBatches(records)) return null;
    const [table] = records.tables;
    const rows = tab.rows - (records.firstHeader - 1) - (table?.headerHeight ?? 1);
    return { rows, batches: table?.kind === "log" ? rows / LINES_A_BATCH : rows };
  } catch {
    // No header of batches in it: another kind of tab.
    return null;
  }
}

function holdsBatches({ batches, columns }: Records): boolean {
  const named = columns.some(({ target }) => target?.kind === "fact" && target.fact === "batch");
  if (named) return batches.length > 0;
  // A timetable has columns of steps too, but no days in them.
  const dated = batches.some(({ days }) => days.some((day) => day !== null));
  return dated && stepsOf(columns) >= FEWEST_STEPS;
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
