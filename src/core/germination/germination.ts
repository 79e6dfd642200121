import { totalOf } from "../mathematics";

/** What came up at each inspection of a sowing. */
export interface GerminationRecord {
  /** Days since sowing, rising; uneven gaps are allowed. */
  readonly days: readonly number[];
  /** Seeds newly come up since the inspection before, whole numbers. */
  readonly counts: readonly number[];
  readonly sown: number;
}

/** Measures of a germination; null where nothing, or too little, came up. */
export interface GerminationMeasures {
  readonly germinated: number;
  /** 0 to 1. */
  readonly share: number;
  readonly firstDay: number | null;
  readonly lastDay: number | null;
  /** Days until half of those that came up are up, counting (N + 1)/2. */
  readonly halfDaysCoolbear: number | null;
  /** The same counting N/2. */
  readonly halfDaysFarooq: number | null;
  readonly meanDays: number | null;
  readonly varianceDays: number | null;
  readonly standardErrorDays: number | null;
  /** Σ seeds come up ÷ day, seeds a day. */
  readonly maguireSpeed: number;
  /** 100 ÷ mean days. */
  readonly velocity: number | null;
}

/**
 * Measures of a germination.
 *
 * A running total that meets the half exactly is reached on that day; between inspections it rises
 * evenly. Seeds that come up on day 0 add nothing to the speed, which has no meaning there.
 *
 * Source: Coolbear, P., Francis, A., Grierson, D. (1984). J. Exp. Bot. 35, 1609-1617, and Farooq,
 *   M. et al. (2005). J. Integr. Plant Biol. 47, 187-193 (days to half); Maguire, J. D. (1962).
 *   Crop Science 2, 176-177 (speed); mean time with the variance over n − 1.
 *   (Volumes and pages from memory.)
 */
export function germinationMeasures({
  days,
  counts,
  sown,
}: GerminationRecord): GerminationMeasures {
  const germinated = totalOf(counts);
  const daySum = counts.reduce((sum, count, i) => sum + count * (days[i] as number), 0);
  const mean = germinated === 0 ? null : daySum / germinated;
  const variance =
    mean === null || germinated < 2
      ? null
      : counts.reduce((sum, count, i) => sum + count * ((days[i] as number) - mean) ** 2, 0) /
        (germinated - 1);
  const filled = days.filter((_, i) => (counts[i] as number) > 0);
  return {
    germinated,
    share: germinated / sown,
    firstDay: filled[0] ?? null,
    lastDay: filled[filled.length - 1] ?? null,
    halfDaysCoolbear: daysTo((germinated + 1) / 2, days, counts),
    halfDaysFarooq: daysTo(germinated / 2, days, counts),
    meanDays: mean,
    varianceDays: variance,
    standardErrorDays: variance === null ? null : Math.sqrt(variance / germinated),
    maguireSpeed: counts.reduce((sum, count, i) => {
      const day = days[i] as number;
      return day > 0 ? sum + count / day : sum;
    }, 0),
    velocity: mean === null || mean === 0 ? null : 100 / mean,
  };
}

/** The day on which a running total reaches a number; null when nothing came up. */
function daysTo(wanted: number, days: readonly number[], counts: readonly number[]): number | null {
  let total = 0;
  for (let i = 0; i < counts.length; i += 1) {
    const before = total;
    total += counts[i] as number;
    if (total < wanted || total === 0) continue;
    const day = days[i] as number;
    const dayBefore = i === 0 ? 0 : (days[i - 1] as number);
    return dayBefore + ((wanted - before) / (total - before)) * (day - dayBefore);
  }
  return null;
}
