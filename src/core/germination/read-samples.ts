import {
  type Cell,
  cellText,
  type DayOrder,
  type DecimalMark,
  dayColumnReader,
  type Grid,
  isBlank,
  readCount,
  shortened,
} from "../cells";
import type { CivilDay } from "../dates";
import { InputError } from "../faults";
import { lazily } from "../lazily";
import { madeOnce } from "../made-once";
import { foldName } from "../names";
import {
  besideTable,
  columnRemarks,
  type RowFault,
  type RowTrouble,
  rowMustBeReady,
} from "../tables";
import { everyWord, tableWords } from "../words";

const seedWords = lazily(() => {
  const words = tableWords("germination");
  return { ...words, batch: [...everyWord(({ facts }) => facts.batch), ...words.batch] };
});

/** Where its columns stand; null where the grid has no header of such a table. */
export function samplesTable(grid: Grid) {
  return besideTable(grid, {
    kind: "germination",
    words: seedWords(),
    required: ["batch", "day"],
  });
}

/** One inspection of a sample. */
export interface Inspection {
  /** Since sowing. */
  readonly days: number;
  /** Seeds newly come up since the inspection before, 0 or more. */
  readonly up: number;
}

export interface SeedSample {
  /** Null where the table does not say. */
  readonly sown: number | null;
  /** In order of their days, each day once. */
  readonly inspections: readonly Inspection[];
}

/** The samples of a batch of seed, in the order of the table. */
export interface SampledBatch {
  readonly batch: string;
  readonly samples: readonly SeedSample[];
}

export interface SamplesTable {
  readonly batches: readonly SampledBatch[];
  /** What could not be used, or was read in a way of its own. */
  readonly troubles: readonly RowTrouble[];
}

export interface SampleHabits {
  readonly decimalMark: DecimalMark | null;
  readonly localeOrder: DayOrder | null;
}

/** A number up to this in the column of days counts from sowing; a day as a spreadsheet keeps it is far above. */
const MOST_DAYS = 1000;

/**
 * Reads samples of seed, a row an inspection. A batch's sample goes by its name, where it has one; seeds and day
 * of sowing may stand in one row of it alone. A row that can't be read is left out, and said.
 *
 * Longer than most: its readers all stand on one table and its columns.
 *
 * @throws InputError "no-header-row"; "row-not-ready" when a cell shows an error or is still loading
 */
export function readSamples(grid: Grid, { decimalMark, localeOrder }: SampleHabits): SamplesTable {
  const table = samplesTable(grid);
  const counts = table?.columnOf.up === undefined ? ("soFar" as const) : ("up" as const);
  if (table === null || table.columnOf[counts] === undefined) {
    const columns = ["Batch", "Day", "Came up"];
    throw new InputError({ code: "no-header-row", argument: "samples", columns });
  }
  const days = (field: "sownOn" | "day") =>
    dayColumnReader(() => table.rows.map((row) => table.cell(row, field)), {
      usualOrder: () => localeOrder,
      asOf: null,
    });
  const readers = { sownOn: days("sownOn"), day: days("day") };
  const dayIn = (field: "sownOn" | "day", cell: Cell): CivilDay | null => {
    const read = readers[field].read(cell);
    return read.kind === "day" ? read.day : null;
  };
  const countIn = (row: number, field: "sown" | "up" | "soFar") =>
    readCount(table.cell(row, field), { decimalMark, outOf: null });
  const batches = new Map<string, { name: string; samples: Map<string, number[]> }>();
  const troubles: RowTrouble[] = [];
  const leaveOut = (row: number, why: RowFault) =>
    troubles.push({ code: "row-left-out", table: "germination", row: row + 1, why });
  for (const row of table.rows) {
    rowMustBeReady("samples", table, row);
    const name = cellText(table.cell(row, "batch"));
    const fold = foldName(name);
    if (fold === "") leaveOut(row, { code: "no-batch-named" });
    else {
      const batch = madeOnce(batches, fold, () => ({ name, samples: new Map() }));
      const sample = foldName(cellText(table.cell(row, "sample")));
      madeOnce(batch.samples, sample, (): number[] => []).push(row);
    }
  }
  const sampleOf = (rows: readonly number[]): SeedSample => {
    const sownOn = firstOf(rows, (row) => dayIn("sownOn", table.cell(row, "sownOn")));
    const sown = firstOf(rows, (row) => {
      const read = countIn(row, "sown");
      // A sample of nothing tells nothing.
      return read.kind === "count" && read.count > 0 ? read.count : null;
    });
    const found: Counted[] = [];
    for (const row of rows) {
      const cell = table.cell(row, "day");
      const count = countIn(row, counts);
      const day = daysSinceSowing(cell, () => dayIn("day", cell), sownOn);
      if (typeof day !== "number") leaveOut(row, day);
      else if (count.kind === "unread") leaveOut(row, { code: "up-unread", why: count.why });
      // Of a running total a blank tells nothing; of new ones it saw nothing come up.
      else if (count.kind === "blank" && counts === "soFar") leaveOut(row, { code: "up-blank" });
      else found.push({ row, days: day, count: count.kind === "count" ? count.count : 0 });
    }
    return { sown, inspections: inspectionsOf(found, counts === "soFar", leaveOut) };
  };
  const read = [...batches.values()].map(({ name, samples }) => ({
    batch: shortened(name),
    samples: [...samples.values()].map(sampleOf),
  }));
  const rowOf = (one: RowTrouble) => ("row" in one ? one.row : 0);
  return {
    batches: read,
    troubles: [
      ...troubles.sort((one, other) => rowOf(one) - rowOf(other)),
      ...columnRemarks("germination", table),
    ],
  };
}

/** What a row says: seeds newly come up, or all so far. */
interface Counted {
  readonly row: number;
  readonly days: number;
  readonly count: number;
}

/** Of each day what is new, in order; a running total that falls is left out. */
function inspectionsOf(
  found: readonly Counted[],
  isRunning: boolean,
  leaveOut: (row: number, why: RowFault) => void,
): readonly Inspection[] {
  const inOrder = [...found].sort((one, other) => one.days - other.days || one.row - other.row);
  const ups = new Map<number, number>();
  let total = 0;
  for (const { row, days, count } of inOrder) {
    const up = isRunning ? count - total : count;
    if (up < 0) {
      leaveOut(row, { code: "up-falls", before: total });
      continue;
    }
    total += up;
    ups.set(days, (ups.get(days) ?? 0) + up);
  }
  return [...ups].map(([days, up]) => ({ days, up }));
}

function firstOf<Found>(
  rows: readonly number[],
  read: (row: number) => Found | null,
): Found | null {
  for (const row of rows) {
    const found = read(row);
    if (found !== null) return found;
  }
  return null;
}

/** A fault where it is neither a number of days nor a day that can be told from sowing. */
function daysSinceSowing(
  cell: Cell,
  day: () => CivilDay | null,
  sownOn: CivilDay | null,
): number | RowFault {
  if (isBlank(cell)) return { code: "no-inspection-day" };
  const text = cellText(cell);
  if (/^\d{1,4}$/.test(text) && Number(text) <= MOST_DAYS) return Number(text);
  const read = day();
  if (read === null) return { code: "not-a-day", found: shortened(text) };
  if (sownOn === null) return { code: "no-day-of-sowing" };
  return read < sownOn ? { code: "ends-before-it-begins" } : read - sownOn;
}
