import { totalOf } from "../mathematics";
import { ALLOWED_RANGE } from "./tolerance.table";

/** The number of seeds for which the published ranges hold. */
const SEEDS_A_SAMPLE = 100;

/** How far two or four samples sown alike differ, and whether chance allows as much. */
export type SamplesReading =
  | { readonly code: "other-size"; readonly samples: "2" | "4"; readonly seeds: number }
  /** Seeds that the samples differ by; the mean share in whole per cent. */
  | {
      readonly code: "no-range";
      readonly samples: "2" | "4";
      readonly range: number;
      readonly mean: number;
    }
  | {
      readonly code: "agree" | "differ";
      readonly samples: "2" | "4";
      readonly range: number;
      readonly mean: number;
      readonly allowed: number;
    };

/**
 * Whether samples sown alike differ by no more than chance allows.
 *
 * @param germinated seeds that came up in each sample
 * @param sownEach   seeds sown in each
 * @returns null when there are not two or four samples
 *
 * Source: 7 CFR 201.55(a); see tolerance.table.ts.
 */
export function comparedSamples(
  germinated: readonly number[],
  sownEach: number,
): SamplesReading | null {
  const number = germinated.length;
  if (number !== 2 && number !== 4) return null;
  const samples = number === 2 ? "2" : "4";
  if (sownEach !== SEEDS_A_SAMPLE) return { code: "other-size", samples, seeds: sownEach };
  const mean = Math.round(totalOf(germinated) / number);
  const range = Math.max(...germinated) - Math.min(...germinated);
  const mirrored = mean > 50 ? mean : SEEDS_A_SAMPLE + 1 - mean;
  const row = ALLOWED_RANGE.find(([at]) => at === mirrored);
  const allowed = row?.[number === 4 ? 1 : 2] ?? null;
  if (allowed === null) return { code: "no-range", samples, range, mean };
  return { code: range > allowed ? "differ" : "agree", samples, range, mean, allowed };
}
