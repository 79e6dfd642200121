import type { Who } from "./ranges";
import type { Stage } from "./records-on-day";
import { type NurseryScore, type Quantity, type Sums, sumsKey } from "./score-nursery";

/** One line of the table: means over nurseries, each counting equally. Shares are 0 to 1. */
export interface CoverLine {
  readonly nurseries: number;
  readonly ranges: number;
  /** Share of the batches asked about that got a range. */
  readonly given: number;
  readonly cover: number;
  /** Standard error of the cover, from how nurseries differ. */
  readonly error: number;
  /** Shares of ranges that the truth fell below, and above. */
  readonly below: number;
  readonly above: number;
  /** Days; or plants for each 100 standing. */
  readonly width: number;
  readonly score: number;
  /** Our cover and width on the batches of which this rival gave a range too. */
  readonly oursCover: number;
  readonly oursWidth: number;
}

export interface LineOf {
  readonly level: number;
  readonly who: Who;
  readonly quantity: Quantity;
  readonly stage: Stage | "all";
}

/** @returns null when no nursery got such a range */
export function coverLine(
  scores: readonly NurseryScore[],
  { level, who, quantity, stage }: LineOf,
): CoverLine | null {
  const key = sumsKey({ level, who, quantity, stage });
  const all = scores.flatMap(({ sums }) => sums.get(key) ?? []);
  const some = all.filter(({ given }) => given > 0);
  if (some.length === 0) return null;
  const shared = some.filter(({ oursGiven }) => oursGiven > 0);
  const share = (part: keyof Sums) => mean(some.map((sums) => sums[part] / sums.given));
  const oursShare = (part: keyof Sums) => mean(shared.map((sums) => sums[part] / sums.oursGiven));
  return {
    nurseries: some.length,
    ranges: some.reduce((sum, { given }) => sum + given, 0),
    given: mean(all.map((sums) => sums.given / sums.asked)),
    cover: share("held"),
    error: standardError(some.map(({ held, given }) => held / given)),
    below: share("below"),
    above: share("above"),
    width: share("width"),
    score: share("score"),
    oursCover: oursShare("oursHeld"),
    oursWidth: oursShare("oursWidth"),
  };
}

/** 0 of no values: nothing to compare. */
function mean(values: readonly number[]): number {
  return values.length === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / values.length;
}

function standardError(values: readonly number[]): number {
  if (values.length < 2) return 0;
  const centre = mean(values);
  const squares = values.reduce((sum, value) => sum + (value - centre) ** 2, 0);
  return Math.sqrt(squares / (values.length - 1) / values.length);
}
