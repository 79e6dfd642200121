import { InputError } from "../faults";
import { totalOf } from "../mathematics";
import { type GerminationMeasures, germinationMeasures } from "./germination";
import { comparedSamples, type SamplesReading } from "./samples";

export interface GerminationQuestion {
  /** Days since sowing of each inspection. */
  readonly days: readonly number[];
  /** For each inspection, the seeds newly come up in each sample. */
  readonly counts: readonly (readonly number[])[];
  /** Seeds sown in all samples together, 1 or more. */
  readonly sown: number;
}

export interface GerminationSummary {
  readonly sown: number;
  readonly measures: GerminationMeasures;
  readonly samples: SamplesReading | null;
}

/** The columns of a list of measures. */
export const GERMINATION_COLUMNS = { measure: "text", value: "number", unit: "text" } as const;

/**
 * Measures of a germination, and of samples sown alike whether they agree.
 *
 * @throws InputError a GerminationFault
 */
export function germinationSummary({
  days,
  counts,
  sown,
}: GerminationQuestion): GerminationSummary {
  check({ days, counts, sown });
  const totals = counts.map((row) => totalOf(row));
  const samples = (counts[0] ?? []).map((_, sample) =>
    counts.reduce((sum, row) => sum + (row[sample] as number), 0),
  );
  return {
    sown,
    measures: germinationMeasures({ days, counts: totals, sown }),
    samples: comparedSamples(samples, sown),
  };
}

function check({ days, counts, sown }: GerminationQuestion): void {
  if (days.length === 0 || days.length !== counts.length) {
    const rows = { days: days.length, counts: counts.length };
    throw new InputError({ code: "inspections-differ", ...rows });
  }
  days.forEach((day, i) => {
    if (day < 0) throw new InputError({ code: "day-below-zero", day });
    const before = days[i - 1];
    if (before !== undefined && day <= before) {
      throw new InputError({ code: "days-not-rising", day, before });
    }
  });
  const up = counts.reduce((sum, row) => sum + totalOf(row), 0);
  if (!(sown >= 1)) throw new InputError({ code: "nothing-sown", sown });
  if (up > sown) throw new InputError({ code: "more-up-than-sown", up, sown });
}
