/** How a nursery breaks what a forecast takes for granted. What is left out is as in the other nurseries. */
export interface Change {
  readonly name: string;
  /** Added each year to the log odds of a take. */
  readonly takeDrift?: number;
  /** Added each year to the log of every length. */
  readonly dayDrift?: number;
  /** Height of the year's wave in log lengths, and in the log odds of a take. */
  readonly season?: { readonly slow: number; readonly odds: number };
  /** Standard deviation of what a month does to all batches in it: log lengths, log odds. */
  readonly shocks?: { readonly slow: number; readonly odds: number };
  /** Share of the batches that die whole. Where it isn't written, their rows are closed and no more. */
  readonly deaths?: { readonly share: number; readonly written: boolean };
  /** Mean days until a record is typed. */
  readonly typedAfter?: number;
  /** Share of the batches that stand still for long, by a tail that has no variance to speak of. */
  readonly longStalls?: number;
  /** Least and most seeds of a batch, even in their logarithm. */
  readonly seeds?: readonly [number, number];
  /** So many varieties, of which each has two or three batches. */
  readonly varieties?: number;
  /** Share of the counts that is never written. */
  readonly countsMissing?: number;
  /** Standard deviation of grafters' log odds, who come and go. */
  readonly turnover?: number;
}

/**
 * Nurseries of about 36 finished batches in two and a half years, each of which breaks one thing. The
 * figures are those on which an earlier look found forecasts that don't hold (our choice, no source).
 */
export const CHANGES: readonly Change[] = [
  { name: "nothing changes", season: { slow: 0, odds: 0 } },
  { name: "season of 12 %", season: { slow: 0.12, odds: 0.5 } },
  { name: "season of 25 %", season: { slow: 0.25, odds: 0.5 } },
  { name: "months that differ", season: { slow: 0, odds: 0 }, shocks: { slow: 0.06, odds: 0.5 } },
  { name: "takes fall", season: { slow: 0, odds: 0 }, takeDrift: -0.4 },
  { name: "steps grow slower", season: { slow: 0, odds: 0 }, dayDrift: 0.06 },
  { name: "7 % die, written", deaths: { share: 0.07, written: true } },
  { name: "7 % die, not written", deaths: { share: 0.07, written: false } },
  { name: "typed 25 days late", typedAfter: 25 },
  { name: "long stalls", longStalls: 0.12 },
  { name: "20 to 5,000 seeds", seeds: [20, 5000] },
  { name: "two batches a variety", varieties: 30 },
  { name: "30 % of counts missing", countsMissing: 0.3 },
  { name: "grafters come and go", turnover: 0.8 },
];
