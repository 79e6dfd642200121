import { type CivilDay, gridOf, type Records, readRecords } from "../../core";
import { type Chance, chanceOf } from "../calibration/chance";
import { FIRST_DAY } from "./invented-takes";
import { SETTINGS } from "./settings";
import { STEP_NAMES } from "./verdicts";

export interface UnevenTakes {
  /** Fewest and most grafts of a batch. */
  readonly sizes: readonly [number, number];
  readonly correlation: number;
  /** Batches of each grafter. */
  readonly groups: readonly number[];
  readonly varieties: number;
  /** Standard deviation of grafters in log odds; 0 where nobody differs. */
  readonly differ: number;
  /** Whether takes go with the roll of tape that was used. */
  readonly tapeTells: boolean;
}

export interface UnevenBatch {
  /** From 0. */
  readonly group: number;
  readonly variety: number;
  readonly tape: "blue roll" | "white roll";
  readonly graftedOn: number;
  readonly grafted: number;
  readonly taken: number;
  /** Share that all batches like it take on average. */
  readonly share: number;
}

/** The batches of a nursery in order of grafting, each with a fate of its own. */
export function unevenTakes(kind: UnevenTakes, seed: number): readonly UnevenBatch[] {
  const chance = chanceOf(seed, 72);
  const [lowest, highest] = SETTINGS.usual;
  const usual = logOdds(chance.between(lowest, highest));
  const varieties = Array.from(
    { length: kind.varieties },
    () => (kind.varieties > 1 ? SETTINGS.varietiesDiffer : 0) * chance.normal(),
  );
  const batches = kind.groups.flatMap((count, group) => {
    const own = kind.differ * chance.normal();
    return Array.from({ length: count }, (): UnevenBatch => {
      const variety = chance.whole(0, kind.varieties - 1);
      const poor = chance.happens(SETTINGS.tape.poorPart);
      const tape = kind.tapeTells ? tapeOdds(poor) : usual;
      const share = 1 / (1 + Math.exp(-(tape + own + (varieties[variety] as number))));
      const grafted = sizeOf(chance, kind.sizes);
      return {
        group,
        variety,
        tape: poor ? "blue roll" : "white roll",
        graftedOn: FIRST_DAY + chance.whole(0, SETTINGS.days - 1),
        grafted,
        taken: takenOf(chance, { grafted, share, correlation: kind.correlation }),
        share,
      };
    });
  });
  return batches.sort((a, b) => a.graftedOn - b.graftedOn);
}

/** Grafts of a batch, even in the logarithm. */
export function sizeOf(chance: Chance, [least, most]: readonly [number, number]): number {
  return Math.round(Math.exp(chance.between(Math.log(least), Math.log(most))));
}

/** Takes of a batch whose own share is drawn from a beta with this mean and correlation. */
export function takenOf(
  chance: Chance,
  of: { readonly grafted: number; readonly share: number; readonly correlation: number },
): number {
  if (of.correlation === 0) return chance.binomial(of.grafted, of.share);
  const total = 1 / of.correlation - 1;
  const taken = gamma(chance, of.share * total);
  const lost = gamma(chance, (1 - of.share) * total);
  return chance.binomial(of.grafted, taken / (taken + lost));
}

/** @param shape above 0; one below 1 is drawn from the next higher (Marsaglia and Tsang, as in chance.ts) */
function gamma(chance: Chance, shape: number): number {
  if (shape < 1) return gamma(chance, shape + 1) * (1 - chance.share()) ** (1 / shape);
  return chance.length("gamma", shape, 1 / Math.sqrt(shape));
}

function tapeOdds(poor: boolean): number {
  return logOdds(poor ? SETTINGS.tape.poor : SETTINGS.tape.good);
}

function logOdds(share: number): number {
  return Math.log(share / (1 - share));
}

const HEADER = ["Batch", "Variety", "Grafter", "Nursery", "Grafted on", "Grafts made", "Takes"];

/** The batches as a sheet that was read. Tape and shade are columns of the nursery's own. */
export function recordsOf(batches: readonly UnevenBatch[]): Records {
  const rows = batches.map((batch, index) => [
    `B-${index}`,
    `Variety ${batch.variety}`,
    groupName(batch.group),
    "the only one",
    { day: batch.graftedOn as CivilDay },
    batch.grafted,
    batch.taken,
    batch.tape,
    index % 3 === 0 ? "light" : "deep",
  ]);
  return readRecords(gridOf([[...HEADER, "Tape", "Shade"], ...rows]), {
    stepNames: STEP_NAMES,
    asOf: null,
    localeOrder: "day-first",
    decimalMark: ".",
    told: new Map(),
  });
}

export function groupName(group: number): string {
  return `Grafter ${String.fromCharCode(65 + group)}`;
}
