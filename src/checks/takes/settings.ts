import { isTenth, partAsked } from "../part-asked";

/**
 * What the nurseries with batches of uneven sizes are made of. Every figure is our choice of what is
 * plausible or hard; none is read from the mathematics that is checked.
 */
export const SETTINGS = {
  /** Fewest and most grafts of a batch, even in the logarithm. */
  sizes: [
    [100, 400],
    [20, 5000],
  ],
  /** Correlations of the plants of a batch. */
  correlations: [0, 0.03, 0.1],
  /** Batches of each group whose take rates are summed. */
  summed: [[3], [2, 2, 2, 2], [5, 5, 5, 5], [20, 20, 20, 20], [2, 4, 10, 40]],
  /** Batches of each grafter who is compared. */
  compared: [
    [12, 12, 12, 12, 12, 12],
    [3, 3, 6, 12, 24, 48],
  ],
  /** Varieties that grafters are evened for; they differ by so much in log odds (standard deviation). */
  varieties: 4,
  varietiesDiffer: 0.5,
  /** How far groups differ in log odds where they do (standard deviation). */
  groupsDiffer: 0.6,
  /** Share of takes that a nursery lies about, at least and at most. */
  usual: [0.65, 0.85],
  /** Takes on a good and on a poor roll of tape, and the part of batches that the poor one went on. */
  tape: { good: 0.89, poor: 0.54, poorPart: 0.5 },
  days: 730,
  /** A fall, in points of 100, after two quiet years, and the share of takes before it. */
  trend: {
    fall: 0.08,
    before: 0.8,
    quietYears: 2,
    batchesAMonth: [4, 12],
    correlations: [0.03, 0.1],
  },
} as const;

/** What must come out, of 100. */
export const GOALS = {
  /** Ranges that hold: at least, and at most where a nursery has so many batches. */
  leastHeld: 0.93,
  mostHeld: 0.97,
  mostHeldFrom: 20,
  mostFalseLinks: 0.06,
  leastTapeFound: 0.95,
  /** False signals of falling takes a nursery and year. */
  mostFalseSignals: 0.2,
  /** Nurseries in which a fall is seen within three months. */
  leastFallsSeen: 0.85,
} as const;

/** The word that asks for nurseries that nobody has looked at while the mathematics was made. */
const FINAL = "--final";
/** Nurseries from here on are for the final figures alone. */
const FIRST_FINAL_SEED = 7_000_000;

export interface Seeds {
  readonly first: number;
  readonly count: number;
}

/** Which nurseries a run looks at: those for work, or the final block; all of a line, or a tenth. */
export function seedsAsked(words: readonly string[], whole: number): Seeds {
  return { first: words.includes(FINAL) ? FIRST_FINAL_SEED : 0, count: partAsked(words, whole) };
}

/** A goal with what chance alone does to a tenth of the nurseries (two standard errors); else as it stands. */
export function slack(words: readonly string[], share: number, of: number): number {
  return isTenth(words) ? 2 * Math.sqrt((share * (1 - share)) / of) : 0;
}

export interface Setting {
  /** Fewest and most grafts of a batch. */
  readonly sizes: readonly [number, number];
  readonly correlation: number;
}

/** Nurseries of the table: of each size and correlation one. */
export function eachSetting(): readonly Setting[] {
  return SETTINGS.sizes.flatMap((sizes) =>
    SETTINGS.correlations.map((correlation) => ({ sizes, correlation })),
  );
}
