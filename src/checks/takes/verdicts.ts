import {
  builtInTimetable,
  type CivilDay,
  type ComparedTake,
  comparedTakes,
  gridOf,
  type Records,
  readRecords,
  takeReasons,
} from "../../core";
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
  /** Ranges within which the rate of all lies, where nobody differs the truth for everyone. */
  readonly held: number;
}

const HEADER = ["Batch", "Variety", "Grafter", "Nursery", "Grafted on", "Grafts made", "Takes"];
export const STEP_NAMES = builtInTimetable().methods.flatMap(({ steps }) =>
  steps.map(({ name }) => name),
);

/** Counts what TAKE_COMPARED reads in invented nurseries. Shares are 0 to 1. */
export function verdictsOn(
  kind: InventedTakes,
  {
    evenFor,
    nurseries,
    firstSeed = 0,
  }: { readonly evenFor: EvenFor; readonly nurseries: number; readonly firstSeed?: number },
): VerdictTally {
  let anyone = 0;
  let firstBelow = 0;
  let tooFew = 0;
  let ranges = 0;
  let held = 0;
  for (let seed = firstSeed; seed < firstSeed + nurseries; seed += 1) {
    const batches = inventedTakes(kind, seed);
    const groups = groupsOf(recordsOf(batches), evenFor);
    const readings = [...groups.values()].map(({ reading }) => reading);
    const sum = (what: "grafted" | "taken") => batches.reduce((all, one) => all + one[what], 0);
    const overall = sum("taken") / sum("grafted");
    for (const { from, to } of groups.values()) {
      if (from === null || to === null) continue;
      ranges += 1;
      if (from <= overall && overall <= to) held += 1;
    }
    if (readings.some((one) => one === "above" || one === "below")) anyone += 1;
    if (groups.get("Grafter A")?.reading === "below") firstBelow += 1;
    tooFew += readings.filter((one) => one === "too few").length / readings.length;
  }
  return {
    nurseries,
    anyone: anyone / nurseries,
    firstBelow: firstBelow / nurseries,
    tooFew: tooFew / nurseries,
    held: held / Math.max(1, ranges),
  };
}

/** Nurseries in which TAKE_REASONS reads a link of takes with who grafted, as a share. */
export function grafterNamed(kind: InventedTakes, nurseries: number): number {
  let named = 0;
  for (let seed = 0; seed < nurseries; seed += 1) {
    const { reasons } = takeReasons({
      records: recordsOf(inventedTakes(kind, seed)),
      level: 0.95,
    });
    // There is no best where no link is clear.
    if (reasons.some(({ column, best }) => column === "Grafter" && best !== null)) named += 1;
  }
  return named / nurseries;
}

function groupsOf(records: Records, evenFor: EvenFor): ReadonlyMap<string, ComparedTake> {
  const { groups } = comparedTakes({
    records,
    by: "Grafter",
    // One and the same text in every row evens for nothing.
    evenFor: evenFor === "nothing" ? "Nursery" : evenFor,
    level: 0.95,
  });
  return new Map(groups.map((one) => [one.group.join(" "), one]));
}

function recordsOf(batches: readonly InventedBatch[]): Records {
  const rows = batches.map((batch, index) => [
    `B-${index}`,
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
