import { totalOf } from "../mathematics";
/** Counts of one period. */
export interface ChartPoint {
  readonly taken: number;
  /** Above 0. */
  readonly grafted: number;
}

export interface ChartLimits {
  /** Shares, 0 to 1. */
  readonly low: number;
  readonly high: number;
}

export interface ProportionChart {
  /** All periods together: the usual rate. */
  readonly centre: number;
  /** How many times wider than chance the limits stand; 1 or more. */
  readonly width: number;
  readonly limits: readonly ChartLimits[];
  readonly readings: readonly ChartReading[];
}

export type ChartReading = "usual" | "low" | "high" | "drifting down" | "drifting up";

/** Mean range of two draws, in standard deviations of one. */
const RANGE_OF_TWO = 1.128;
const STANDARD_ERRORS = 3;
/** So many in a row on one side are a drift. */
const RUN = 8;

/**
 * Shares of periods in order, against limits that allow for chance and for how much neighbouring
 * periods differ beyond it.
 *
 * @param onlyChance true for the plain chart, whose limits allow for chance alone
 *
 * Method: p′ chart; the width is the mean moving range of the standardised shares ÷ 1.128, not
 *   below 1, so that it is the p chart where periods differ no more than chance. A point beyond its
 *   limits is low or high; else eight or more in a row on one side of the rate of all periods within limits are a drift.
 * Source: Laney, D. B. (2002). Improved control charts for attributes. Quality Engineering 14,
 *   531-537 (looked up, and that the width is of moving ranges of standardised shares); p chart:
 *   NIST/SEMATECH e-Handbook, section 6.3.3.2.
 */
export function proportionChart(
  points: readonly ChartPoint[],
  onlyChance = false,
): ProportionChart | null {
  if (points.length === 0) return null;
  const centre = pooled(points);
  const errors = points.map((point) => Math.sqrt((centre * (1 - centre)) / point.grafted));
  const shares = points.map((point) => point.taken / point.grafted);
  const width = onlyChance ? 1 : Math.max(1, movingSpread(shares, errors, centre));
  const limits = errors.map((error) => ({
    low: Math.max(0, centre - STANDARD_ERRORS * error * width),
    high: Math.min(1, centre + STANDARD_ERRORS * error * width),
  }));
  return { centre, width, limits, readings: readingsOf(points, shares, limits) };
}

/** 0 where there are no two periods, or nothing varies. */
function movingSpread(
  shares: readonly number[],
  errors: readonly number[],
  centre: number,
): number {
  if (shares.length < 2 || centre === 0 || centre === 1) return 0;
  let ranges = 0;
  let before = 0;
  shares.forEach((share, index) => {
    const standardised = (share - centre) / (errors[index] as number);
    if (index > 0) ranges += Math.abs(standardised - before);
    before = standardised;
  });
  return ranges / (shares.length - 1) / RANGE_OF_TWO;
}

function readingsOf(
  points: readonly ChartPoint[],
  shares: readonly number[],
  limits: readonly ChartLimits[],
): readonly ChartReading[] {
  const beyond = shares.map((share, index): "low" | "high" | null => {
    const { low, high } = limits[index] as ChartLimits;
    return share < low ? "low" : share > high ? "high" : null;
  });
  // One disaster pulls the centre down, and would else let all periods before it drift up.
  const middle = pooled(points.filter((_, index) => beyond[index] === null));
  let run = 0;
  let sideBefore = 0;
  return shares.map((share, index) => {
    const side = Math.sign(share - middle);
    // A point on the middle is on neither side.
    run = side === 0 ? 0 : side === sideBefore ? run + 1 : 1;
    sideBefore = side;
    const out = beyond[index] ?? null;
    if (out !== null) return out;
    if (run < RUN) return "usual";
    return side < 0 ? "drifting down" : "drifting up";
  });
}

/** Takes over grafts of all points together; 0 of none. */
function pooled(points: readonly ChartPoint[]): number {
  const grafted = totalOf(points.map(({ grafted }) => grafted));
  return grafted === 0 ? 0 : totalOf(points.map(({ taken }) => taken)) / grafted;
}
