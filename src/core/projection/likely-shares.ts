import type { Month } from "../dates";
import { madeOnce } from "../made-once";
import { largestRemainder, totalOf } from "../mathematics";
import type { MonthlyBatch, Numbers, ReadyDraws } from "./ready-draws";

/** What is likely of plants to come. It adds up: over batches to varieties, over these to months, over months to all. */
export interface LikelyShares {
  readonly all: number;
  /** By month and variety; null is all together. */
  readonly months: ReadonlyMap<Month, ReadonlyMap<string | null, number>>;
  /** Of each batch, in their order. */
  readonly batches: readonly number[];
}

/** In a month in which so few of the draws bring any, none are likely (our choice). */
const SELDOM = 0.1;

/**
 * The likely number of all plants to come is the middle of its draws. The months share it by what the draws bring
 * in each, the varieties of a month share the month's, the batches of a variety share that.
 */
export function likelyShares(
  batches: readonly MonthlyBatch[],
  { draws, months, brought }: ReadyDraws,
): LikelyShares {
  const inTurn = [...months.keys()].sort((a, b) => a - b);
  const numbersOf = (month: Month) => months.get(month)?.get(null) ?? new Float64Array();
  const totals = new Float64Array(draws);
  for (const month of inTurn) addTo(totals, numbersOf(month));
  const all = draws === 0 || inTurn.length === 0 ? 0 : (totals.sort()[middleOf(draws)] as number);
  const often = inTurn.map((month) => {
    const numbers = numbersOf(month);
    return numbers.filter((plants) => plants > 0).length < SELDOM * draws ? 0 : totalOf(numbers);
  });
  const weights = often.some((weight) => weight > 0)
    ? often
    : inTurn.map((month) => totalOf(numbersOf(month)));
  const ofMonths = largestRemainder(all, weights);
  // What each month has of each variety, and of which batches.
  const parts = new Map<
    Month,
    Map<string, { readonly batch: number; readonly plants: number }[]>
  >();
  batches.forEach(({ batch: { variety }, months: own }, batch) => {
    own.forEach(({ month }, at) => {
      const plants = brought[batch]?.[at] as number;
      const ofMonth = madeOnce(parts, month, () => new Map());
      madeOnce(ofMonth, variety, () => []).push({ batch, plants });
    });
  });
  const ofBatches = batches.map(() => 0);
  const shared = inTurn.map((month, at) => {
    const ofMonth = ofMonths[at] as number;
    const ofVarieties = new Map<string | null, number>([[null, ofMonth]]);
    const varieties = [...(parts.get(month) ?? [])].sort(([a], [b]) => (a < b ? -1 : 1));
    const sums = varieties.map(([, own]) => own.reduce((sum, { plants }) => sum + plants, 0));
    largestRemainder(ofMonth, sums).forEach((likely, index) => {
      const [variety, own] = varieties[index] as (typeof varieties)[number];
      ofVarieties.set(variety, likely);
      const shares = largestRemainder(
        likely,
        own.map(({ plants }) => plants),
      );
      own.forEach(({ batch }, place) => {
        ofBatches[batch] = (ofBatches[batch] as number) + (shares[place] as number);
      });
    });
    return [month, ofVarieties] as const;
  });
  return { all, months: new Map(shared), batches: ofBatches };
}

/** Where the middle of so many numbers stands, once they rise: the smallest that half of them stay at or below. */
function middleOf(count: number): number {
  return Math.ceil(count / 2) - 1;
}

/** Adds numbers to sums, draw by draw. */
export function addTo(sums: Numbers, numbers: Numbers): void {
  for (let draw = 0; draw < numbers.length; draw += 1) {
    sums[draw] = (sums[draw] as number) + (numbers[draw] as number);
  }
}
