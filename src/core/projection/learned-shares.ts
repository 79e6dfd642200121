import { type CivilDay, daysLater } from "../dates";
import { lazily } from "../lazily";
import { madeOnce } from "../made-once";
import {
  type KeptCount,
  product,
  type ShareMoments,
  type SharePosterior,
  shareCounts,
  sharePosterior,
  type TimeEffect,
  WHOLE,
} from "../statistics";
import type { Method } from "../timetable";
import type { BatchState } from "./batch-state";
import { byDaysAlike, type CountOnDay, changeOfShare } from "./changes";
import { type DrawnShare, type Forecaster, type Passage, timetableShare } from "./forecaster";

/** What share of the plants of one method passes. */
export type LearnedShares = Pick<Forecaster, "kept" | "draw">;

/**
 * Learned of batches counted at one counted step and at the next that the nursery counts. What the day
 * did to them is taken away first, and comes to what is asked of a day.
 */
export function learnedShares(method: Method, states: readonly BatchState[]): LearnedShares {
  const chain = countedChain(method, states);
  return {
    kept: ({ after, upTo, variety, from }) =>
      linksBetween(chain, after, upTo).reduce((share: ShareMoments, link) => {
        const { posterior, change } = link.learned();
        const day = dayAtLink(method, { after, from }, link);
        return product(share, changedShare(posterior.newBatch(variety), change, day));
      }, WHOLE),
    draw: (uniform) => {
      const drawn = new Map<Link, DrawnLink>();
      return {
        between: ({ after, upTo, variety, from }) =>
          linksBetween(chain, after, upTo).map((link): DrawnShare => {
            const { shares, shift } = madeOnce(drawn, link, () => drawnLink(link, uniform));
            const day = dayAtLink(method, { after, from }, link);
            const mean = shares.meanOf(variety);
            return {
              mean: day === null || shift === null ? mean : shifted(mean, shift(day)),
              correlation: shares.correlation,
            };
          }),
      };
    },
  };
}

/** The steps at which a nursery really counts, with what is learned from each to the next. */
interface Chain {
  readonly method: Method;
  readonly links: readonly Link[];
  /** Links that only the timetable knows, kept since making one takes time. */
  readonly stretches: Map<string, Link>;
}

interface Link {
  /** Indexes of the steps. */
  readonly after: number;
  readonly upTo: number;
  /** Found out when first asked for: it takes longer than all else, and most questions ask for few. */
  readonly learned: () => LearnedShare;
}

interface LearnedShare {
  /** Without what days do. */
  readonly posterior: SharePosterior;
  readonly change: TimeEffect | null;
}

interface DrawnLink {
  readonly shares: ReturnType<SharePosterior["draw"]>;
  readonly shift: ((day: number) => number) | null;
}

function drawnLink(link: Link, uniform: () => number): DrawnLink {
  const { posterior, change } = link.learned();
  const shares = posterior.draw(uniform);
  return { shares, shift: change === null ? null : change.draw(uniform) };
}

/** About the day on which a batch stands at the start of a link, by the timetable's usual days. */
function dayAtLink(
  method: Method,
  { after, from }: Pick<Passage, "after" | "from">,
  link: Link,
): CivilDay | null {
  if (from === null) return null;
  return daysLater(from, Math.max(0, usualSince(method, link.after) - usualSince(method, after)));
}

function usualSince({ steps }: Method, index: number): number {
  let days = 0;
  for (let at: number | null = index; at !== null; at = steps[at]?.after ?? null) {
    if (steps[at]?.after !== null) days += steps[at]?.usual ?? 0;
  }
  return days;
}

/** A share with its log odds moved. @param share 0 to 1 */
function shifted(share: number, by: number): number {
  return share <= 0 || share >= 1 ? share : 1 / (1 + ((1 - share) / share) * Math.exp(-by));
}

function changedShare(
  share: ShareMoments,
  change: TimeEffect | null,
  day: CivilDay | null,
): ShareMoments {
  const { mean, meanSquare } = share;
  if (change === null || day === null || mean <= 0 || mean >= 1) return share;
  const { shift, variance } = change.on(day);
  const moved = shifted(mean, shift);
  const free = moved * (1 - moved);
  // Batches differ as much as before; how unsure the change is comes to it.
  const spread = (meanSquare - mean * mean) / (mean * (1 - mean));
  const most = Math.min(0.9 * free, spread * free + free * free * variance);
  return { mean: moved, meanSquare: moved * moved + most };
}

function countedChain(method: Method, states: readonly BatchState[]): Chain {
  const counted = method.steps
    .map((_, index) => index)
    .filter(
      (index) =>
        method.steps[index]?.counted &&
        (index === method.ready || states.some((state) => state.counts[index] !== null)),
    );
  const links: Link[] = [];
  for (let i = 1; i < counted.length; i += 1) {
    const after = counted[i - 1] as number;
    const upTo = counted[i] as number;
    links.push({
      after,
      upTo,
      learned: lazily(() => learnShare(method, { after, upTo, states })),
    });
  }
  return { method, links, stretches: new Map() };
}

function learnShare(
  method: Method,
  {
    after,
    upTo,
    states,
  }: { readonly after: number; readonly upTo: number; readonly states: readonly BatchState[] },
): LearnedShare {
  const dated = countsBetween(states, after, upTo);
  const change = changeOfShare(dated, states[0]?.asOf ?? 0);
  const effect = change === null ? null : byDaysAlike(change.on);
  const byVariety = new Map<string, KeptCount[]>();
  for (const { variety, kept, of, day } of dated) {
    const without =
      effect === null || day === null
        ? kept
        : Math.round(of * shifted(kept / of, -effect(day).shift));
    madeOnce(byVariety, variety, () => []).push({ kept: without, of });
  }
  const share = timetableShare(method, after, upTo);
  const lossSeen = [...byVariety.values()].some((list) => list.some(({ kept, of }) => kept < of));
  // Where neither the timetable nor the records know of a loss there is nothing to learn.
  if (share === 1 && !lossSeen)
    return { posterior: sharePosterior(new Map(), share), change: null };
  const posterior = sharePosterior(
    new Map([...byVariety].map(([variety, list]) => [variety, shareCounts(list)])),
    share,
  );
  return { posterior, change };
}

function countsBetween(
  states: readonly BatchState[],
  after: number,
  upTo: number,
): readonly CountOnDay[] {
  return states.flatMap(({ batch, counts, doneOn }) => {
    const of = counts[after] ?? null;
    const kept = counts[upTo] ?? null;
    // Plants that went to another batch between the counts were not lost.
    if (of === null || kept === null || of === 0 || kept > of || batch.given > 0) return [];
    return [{ variety: batch.variety, kept, of, day: doneOn[after] ?? null }];
  });
}

/**
 * The links from one step to another. Where the nursery's chain does not start or end there, the
 * timetable's share stands for the stretch that it leaves out.
 */
function linksBetween(chain: Chain, after: number, upTo: number): readonly Link[] {
  const within = chain.links.filter((link) => link.after >= after && link.upTo <= upTo);
  const parts: Link[] = [];
  let at = after;
  for (const link of within) {
    if (link.after > at) parts.push(stretch(chain, at, link.after));
    parts.push(link);
    at = link.upTo;
  }
  if (at < upTo) parts.push(stretch(chain, at, upTo));
  return parts;
}

function stretch({ method, stretches }: Chain, after: number, upTo: number): Link {
  return madeOnce(stretches, `${after} ${upTo}`, () => {
    const share = timetableShare(method, after, upTo);
    return {
      after,
      upTo,
      learned: lazily(() => ({ posterior: sharePosterior(new Map(), share), change: null })),
    };
  });
}
