import { totalOf } from "../mathematics";
import { chanceOfRange } from "../statistics";
import { ALLOWED_RANGE } from "./tolerance.table";

/** The number of seeds for which the published ranges hold. */
const SEEDS_A_SAMPLE = 100;
/** What the published ranges let chance exceed, about; range-by-chance.ts has why. */
const RARE = 1 / 40;

/** How far samples sown alike differ, in seeds, and whether chance allows as much. */
export type SamplesReading =
  /** Not as many seeds in each. */
  | { readonly code: "uneven"; readonly samples: number; readonly sown: number }
  /** By the published ranges; the mean in whole per cent. */
  | {
      readonly code: "agree" | "differ";
      readonly samples: "2" | "4";
      readonly range: number;
      readonly mean: number;
      readonly allowed: number;
    }
  /** Where none are published: of so many sowings, chance alone does it in one; whole number from 1 on. */
  | {
      readonly code: "chance-agrees" | "chance-differs";
      readonly samples: number;
      readonly range: number;
      readonly oneOf: number;
    };

/**
 * Whether samples sown alike differ by no more than chance allows: by the published ranges where they have
 * one, else by the chance of such a range.
 *
 * @param germinated seeds that came up in each sample
 * @param sown       seeds sown in all of them
 * @returns null when there are not two samples
 *
 * Source: 7 CFR 201.55(a); see tolerance.table.ts. Else range-by-chance.ts.
 */
export function comparedSamples(
  germinated: readonly number[],
  sown: number,
): SamplesReading | null {
  const samples = germinated.length;
  if (samples < 2) return null;
  const seeds = sown / samples;
  if (!Number.isInteger(seeds) || germinated.some((one) => one > seeds)) {
    return { code: "uneven", samples, sown };
  }
  const range = Math.max(...germinated) - Math.min(...germinated);
  const published = seeds === SEEDS_A_SAMPLE ? publishedRange(germinated) : null;
  if (published !== null) {
    const { allowed } = published;
    return { code: range > allowed ? "differ" : "agree", range, ...published };
  }
  const chance = chanceOfRange(germinated, seeds);
  const oneOf = Math.round(1 / Math.max(chance, 1e-6));
  return { code: chance < RARE ? "chance-differs" : "chance-agrees", samples, range, oneOf };
}

function publishedRange(germinated: readonly number[]) {
  const { length } = germinated;
  if (length !== 2 && length !== 4) return null;
  const mean = Math.round(totalOf(germinated) / length);
  const mirrored = mean > 50 ? mean : SEEDS_A_SAMPLE + 1 - mean;
  const row = ALLOWED_RANGE.find(([at]) => at === mirrored);
  const allowed = row?.[length === 4 ? 1 : 2] ?? null;
  return allowed === null ? null : ({ samples: length === 4 ? "4" : "2", mean, allowed } as const);
}
