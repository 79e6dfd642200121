import {
  type Batch,
  type BatchBalance,
  batchBalance,
  builtInTimetable,
  type Cell,
  type CivilDay,
  civilDay,
  gridOf,
  type Records,
  readRecords,
} from "../../../src/core";

/** A batch as its row tells it; what is left out is blank. */
export interface LotRow {
  readonly name: string;
  readonly from?: string;
  /** Days since 1 January 2026, in the order of the counts. */
  readonly days?: readonly (number | null)[];
  /** Seeds sown, germinated, grafts made, takes, ready plants. */
  readonly counts?: readonly (number | null)[];
  readonly culled?: number | null;
  readonly dispatched?: number | null;
  readonly closed?: boolean;
}

const HEADER = [
  ...["Batch", "From lot", "Sown", "Seeds sown", "Germination day", "Germinated"],
  ...["Grafted on", "Grafts made", "Take count day", "Takes", "Ready on", "Ready plants"],
  ...["Culled", "Dispatched", "Closed"],
];
const COUNTED_STEPS = 5;
const NEW_YEAR = civilDay(2026, 1, 1) as CivilDay;

/** A batch of seeds of its own in the first row, so that no lot seems to stand for the rows below it. */
const FIRST: LotRow = { name: "First 0", days: [0], counts: [100] };

/** The records of a table of batches and lots, one row more than is given. */
export function lotsTable(rows: readonly LotRow[]): Records {
  const body = [FIRST, ...rows].map(
    ({ name, from, days, counts, culled, dispatched, closed }): Cell[] => {
      const steps = Array.from({ length: COUNTED_STEPS }, (_, step): Cell[] => {
        const day = days?.[step] ?? null;
        return [day === null ? "" : { day: (NEW_YEAR + day) as CivilDay }, counts?.[step] ?? ""];
      });
      return [name, from ?? "", ...steps.flat(), culled ?? "", dispatched ?? "", closed ?? ""];
    },
  );
  return readRecords(gridOf([HEADER, ...body]), {
    stepNames: builtInTimetable().methods.flatMap(({ steps }) => steps.map(({ name }) => name)),
    asOf: civilDay(2027, 12, 31),
    localeOrder: "day-first",
    decimalMark: ".",
    told: new Map(),
  });
}

/** The balance of one of the records' batches, by the method that stands first where none is named. */
export function balanceIn({ stepKeys }: Records, batch: Batch | undefined): BatchBalance | null {
  const method = builtInTimetable().methods[0] ?? null;
  return batch === undefined ? null : batchBalance(batch, { stepKeys, method });
}

/** Plants lost at all stages, without those culled. */
export function lostAtStages({ losses }: Pick<BatchBalance, "losses">): number {
  return losses.reduce((sum, { lost }) => sum + lost, 0);
}
