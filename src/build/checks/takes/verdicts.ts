import {
  builtInTimetable,
  type CivilDay,
  comparedAnswer,
  gridOf,
  type Records,
  readRecords,
} from "../../../core";
import { type InventedBatch, type InventedTakes, inventedTakes } from "./invented-takes";

/** What groups are evened for; "nothing" is the plain rate, judged by the same mathematics. */
export type EvenFor = "nothing" | "Variety" | "Variety+Season" | "Variety+Month";

export interface VerdictTally {
  readonly nurseries: number;
  /** Nurseries in which anyone reads above or below the rest. */
  readonly anyone: number;
  /** In which the first grafter reads below the rest. */
  readonly firstBelow: number;
  /** Readings of "too few to tell" among all, as a share. */
  readonly tooFew: number;
}

const HEADER = ["Batch", "Variety", "Grafter", "Nursery", "Grafted on", "Grafts made", "Takes"];
const STEP_NAMES = builtInTimetable().methods.flatMap(({ steps }) => steps.map(({ name }) => name));

/** Counts what TAKE_COMPARED reads in invented nurseries. Shares are 0 to 1. */
export function verdictsOn(
  kind: InventedTakes,
  evenFor: EvenFor,
  nurseries: number,
  firstSeed = 0,
): VerdictTally {
  let anyone = 0;
  let firstBelow = 0;
  let tooFew = 0;
  for (let seed = firstSeed; seed < firstSeed + nurseries; seed += 1) {
    const readings = readingsOf(recordsOf(inventedTakes(kind, seed)), evenFor);
    const said = [...readings.values()];
    if (said.some((one) => one === "above the rest" || one === "below the rest")) anyone += 1;
    if (readings.get("Grafter A") === "below the rest") firstBelow += 1;
    tooFew += said.filter((one) => one === "too few to tell").length / said.length;
  }
  return {
    nurseries,
    anyone: anyone / nurseries,
    firstBelow: firstBelow / nurseries,
    tooFew: tooFew / nurseries,
  };
}

function readingsOf(records: Records, evenFor: EvenFor): ReadonlyMap<string, string> {
  const { columns, rows } = comparedAnswer({
    records,
    by: "Grafter",
    // One and the same text in every row evens for nothing.
    evenFor: evenFor === "nothing" ? "Nursery" : evenFor,
    level: 0.95,
  });
  const reading = columns.findIndex(({ name }) => name === "Reading");
  return new Map(rows.map((row) => [String(row[0]), String(row[reading])]));
}

function recordsOf(batches: readonly InventedBatch[]): Records {
  const rows = batches.map((batch, place) => [
    `B-${place}`,
    batch.variety,
    batch.grafter,
    "the only one",
    { day: batch.graftedOn as CivilDay },
    batch.grafted,
    batch.taken,
  ]);
  return readRecords(gridOf([HEADER, ...rows]), {
    stepNames: STEP_NAMES,
    asOf: null,
    localeOrder: "day-first",
    decimalMark: ".",
    told: new Map(),
  });
}
