import { type Records, takeTrend } from "../../core";
import type { ChartReading } from "../../core/statistics";
import { chanceOf } from "../calibration/chance";
import { FIRST_DAY } from "./invented-takes";
import { SETTINGS, type Seeds } from "./settings";
import { recordsOf, sizeOf, takenOf, type UnevenBatch } from "./uneven-takes";

export interface FallKind {
  readonly sizes: readonly [number, number];
  readonly correlation: number;
  readonly batchesAMonth: number;
}

export interface FallTally {
  /** Nurseries in which TAKE_TREND says within three months that takes are low, or drift down. */
  readonly seen: number;
  /** The same within a year. */
  readonly seenInAYear: number;
  /** Signals in a quiet year after two quiet years: any reading but usual. */
  readonly falseSignals: number;
}

const DAYS_A_MONTH = 30.4375;
const SOON = 3;
const YEAR = 12;

/** TAKE_TREND by month, asked at the end of each of the twelve months after two quiet years. */
export function fallsSeen(kind: FallKind, seeds: Seeds): FallTally {
  const tally = { seen: 0, seenInAYear: 0, falseSignals: 0 };
  for (let seed = seeds.first; seed < seeds.first + seeds.count; seed += 1) {
    const quiet = readingsOf(batchesOf(kind, seed, 0));
    tally.falseSignals += newOnes(quiet.map((one) => one !== "usual"));
    const fallen = readingsOf(batchesOf(kind, seed, SETTINGS.trend.fall)).map(
      (one) => one === "low" || one === "drifting down",
    );
    if (fallen.slice(0, SOON).includes(true)) tally.seen += 1;
    if (fallen.includes(true)) tally.seenInAYear += 1;
  }
  const each = (sum: number) => sum / seeds.count;
  return {
    seen: each(tally.seen),
    seenInAYear: each(tally.seenInAYear),
    falseSignals: each(tally.falseSignals),
  };
}

function newOnes(signals: readonly boolean[]): number {
  return signals.filter((one, at) => one && signals[at - 1] !== true).length;
}

function monthStart(month: number): number {
  return FIRST_DAY + Math.round(month * DAYS_A_MONTH);
}

function batchesOf(kind: FallKind, seed: number, fall: number): readonly UnevenBatch[] {
  const { before, quietYears } = SETTINGS.trend;
  const quietMonths = quietYears * YEAR;
  return Array.from({ length: (quietMonths + YEAR) * kind.batchesAMonth }, (_, index) => {
    const chance = chanceOf(seed, index, 73);
    const month = Math.floor(index / kind.batchesAMonth);
    const part = (index % kind.batchesAMonth) / kind.batchesAMonth;
    const share = month >= quietMonths ? before - fall : before;
    const grafted = sizeOf(chance, kind.sizes);
    return {
      group: 0,
      variety: 0,
      tape: "white roll",
      share,
      grafted,
      graftedOn: monthStart(month) + Math.floor(part * 28),
      taken: takenOf(chance, { grafted, share, correlation: kind.correlation }),
    } as const;
  });
}

/** How the last month reads at its own end, each of the last twelve. */
function readingsOf(batches: readonly UnevenBatch[]): readonly ChartReading[] {
  const records = recordsOf(batches);
  const quietMonths = SETTINGS.trend.quietYears * YEAR;
  return Array.from({ length: YEAR }, (_, month) => {
    const end = monthStart(quietMonths + month + 1);
    const known = batches.filter(({ graftedOn }) => graftedOn < end).length;
    return lastReading({ ...records, batches: records.batches.slice(0, known) });
  });
}

function lastReading(records: Records): ChartReading {
  const { periods } = takeTrend({ records, period: "month", by: null });
  return periods.at(-1)?.reading ?? "usual";
}
