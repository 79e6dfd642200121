import { InputError } from "../faults";
import { madeOnce } from "../made-once";
import { normalQuantile } from "../mathematics";

export interface ShareInterval {
  /** Shares, 0 to 1. */
  readonly low: number;
  readonly high: number;
}

export interface WilsonOptions {
  /** 0 to trials; need not be whole when trials were made fewer for spread. */
  readonly successes: number;
  /** Above 0. */
  readonly trials: number;
  /** How many of 100 such intervals should hold, as a share strictly between 0 and 1. */
  readonly level: number;
}

/**
 * The Wilson score interval for a share.
 *
 * Assumes independent plants with one common chance. Stays inside 0 to 1, and is usable when none
 * or all succeed.
 *
 * @throws InputError "level-out-of-range" | "no-plants" | "more-taken-than-grafted"
 *
 * Method: without continuity correction.
 * Source: Wilson, E. B. (1927). Probable inference, the law of succession, and statistical
 *   inference. J. Amer. Statist. Assoc. 22, 209-212; method 3 of Newcombe, R. G. (1998).
 *   Statist. Med. 17, 857-872.
 *
 * @example wilsonInterval({ successes: 15, trials: 20, level: 0.95 }) // { low: 0.5313, high: 0.8881 }
 */
export function wilsonInterval({ successes, trials, level }: WilsonOptions): ShareInterval {
  if (!(level > 0 && level < 1)) {
    throw new InputError({ code: "level-out-of-range", argument: "level", found: level });
  }
  if (!(trials > 0) || !(successes >= 0)) {
    throw new InputError({ code: "no-plants", successes, trials });
  }
  if (successes > trials) {
    throw new InputError({
      code: "more-taken-than-grafted",
      taken: successes,
      grafted: trials,
    });
  }
  return scoreInterval({
    share: successes / trials,
    trials,
    reach: madeOnce(reaches, level, () => normalQuantile((1 + level) / 2)),
  });
}

/** By level: a table asks for the same one in every row. */
const reaches = new Map<number, number>();

/**
 * The same interval by its reach instead of its level: so many standard errors to either side, as
 * Student's t has where the spread itself is uncertain.
 *
 * @param share 0 to 1
 */
export function scoreInterval({
  share,
  trials,
  reach,
}: {
  readonly share: number;
  readonly trials: number;
  readonly reach: number;
}): ShareInterval {
  const centre = share + (reach * reach) / (2 * trials);
  const half =
    reach * Math.sqrt((share * (1 - share)) / trials + (reach * reach) / (4 * trials * trials));
  const scale = 1 + (reach * reach) / trials;
  return {
    low: share === 0 ? 0 : (centre - half) / scale,
    high: share === 1 ? 1 : (centre + half) / scale,
  };
}
