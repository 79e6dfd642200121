import { lazily } from "../lazily";
import { madeOnce } from "../made-once";
import {
  type KeptCount,
  learnedLength,
  product,
  type RecordedLengths,
  type ShareMoments,
  type SharePosterior,
  type StepLength,
  type StepWindow,
  shareCounts,
  sharePosterior,
  type WeighedPrior,
  WHOLE,
  windowLength,
  withLateTail,
} from "../statistics";
import type { Method, Step } from "../timetable";
import type { BatchState } from "./batch-state";
import { type DrawnShare, type Forecaster, timetableShare } from "./forecaster";
import { isSilent } from "./silence";

/** Batches that the timetable's days are worth beside the nursery's own (our choice). */
const TIMETABLE_WORTH = 3;

/**
 * A forecaster that knows the nursery's own records beside the timetable.
 *
 * Days: batches that were seen to pass a step, and batches still waiting for it; a batch that went
 * on without the step being recorded says nothing of it, nor does one that fell silent long ago.
 * Shares: batches counted at one counted step and at the next that the nursery counts.
 *
 * @param states where the batches stand, by what is known on the as-of day
 */
export function learn(states: readonly BatchState[]): Forecaster {
  const byMethod = new Map<Method, BatchState[]>();
  for (const state of states) madeOnce(byMethod, state.method, () => []).push(state);
  const lengths = new Map<Step, StepLength>();
  const straights = new Map<string, StepLength | null>();
  const chains = new Map<Method, Chain>();
  const chainOf = (method: Method): Chain =>
    madeOnce(chains, method, () => countedChain(method, byMethod.get(method) ?? []));
  return {
    length: (method, step) =>
      madeOnce(lengths, step, () => lengthOf(method, step, byMethod.get(method) ?? [])),
    straight: (method, after, upTo) =>
      madeOnce(straights, `${method.name}\n${after} ${upTo}`, () =>
        straightLength(method, { after, upTo, states: byMethod.get(method) ?? [] }),
      ),
    kept: ({ method, after, upTo, variety }) =>
      linksBetween(chainOf(method), after, upTo).reduce(
        (share: ShareMoments, link) => product(share, link.posterior().newBatch(variety)),
        WHOLE,
      ),
    draw: (uniform) => {
      const drawn = new Map<Link, ReturnType<SharePosterior["draw"]>>();
      return {
        between: ({ method, after, upTo, variety }) =>
          linksBetween(chainOf(method), after, upTo).map((link): DrawnShare => {
            const truth = madeOnce(drawn, link, () => link.posterior().draw(uniform));
            return { mean: truth.meanOf(variety), correlation: truth.correlation };
          }),
      };
    },
  };
}

function lengthOf(method: Method, step: Step, states: readonly BatchState[]): StepLength {
  const { after } = step;
  const upTo = method.steps.indexOf(step);
  const recorded =
    after === null ? { done: [], waiting: [] } : recordedBetween(states, after, upTo);
  return learnedWithTail({ length: windowLength(step), weight: TIMETABLE_WORTH }, recorded);
}

/** How many days batches took from one step to another, and how many those have waited that still do. */
function recordedBetween(
  states: readonly BatchState[],
  after: number,
  upTo: number,
): RecordedLengths {
  const done: number[] = [];
  const waiting: number[] = [];
  for (const state of states) {
    const start = state.doneOn[after] ?? null;
    if (start === null) continue;
    const day = state.doneOn[upTo] ?? null;
    if (day !== null) {
      if (day >= start) done.push(day - start);
    } else if (state.open && upTo > state.reached && state.recordable[upTo] && !isSilent(state)) {
      waiting.push(state.asOf - start);
    }
  }
  return { done, waiting };
}

/** Batches that must have gone a stretch before it is learned as one. */
const FEWEST_SEEN = 8;
/**
 * What the timetable's wide window between two far steps is worth then: a quarter of a batch (our
 * choice; at a whole one the ranges of days are too wide in npm run check:calibration).
 */
const WINDOW_WORTH = 0.25;

function straightLength(
  method: Method,
  {
    after,
    upTo,
    states,
  }: { readonly after: number; readonly upTo: number; readonly states: readonly BatchState[] },
): StepLength | null {
  const recorded = recordedBetween(states, after, upTo);
  if (recorded.done.length < FEWEST_SEEN) return null;
  const window = windowLength(windowBetween(method, after, upTo));
  return learnedWithTail({ length: window, weight: WINDOW_WORTH }, recorded);
}

function learnedWithTail(prior: WeighedPrior, recorded: RecordedLengths): StepLength {
  return withLateTail(learnedLength(prior.length, prior.weight, recorded), prior, recorded);
}

/**
 * The timetable's window between two steps, from their days since the start. What is early and late
 * at the two ends adds up as independent lengths do, by squares.
 */
function windowBetween(method: Method, after: number, upTo: number): StepWindow {
  const sinceStart = (index: number, side: "from" | "usual" | "by"): number => {
    const step = method.steps[index] as Step;
    return step.after === null ? 0 : sinceStart(step.after, side) + step[side];
  };
  const early = (index: number) => sinceStart(index, "usual") - sinceStart(index, "from");
  const late = (index: number) => sinceStart(index, "by") - sinceStart(index, "usual");
  const usual = Math.max(0, sinceStart(upTo, "usual") - sinceStart(after, "usual"));
  return {
    from: Math.max(0, Math.round(usual - Math.hypot(early(upTo), late(after)))),
    usual,
    by: Math.round(usual + Math.hypot(late(upTo), early(after))),
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
  readonly posterior: () => SharePosterior;
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
      posterior: lazily(() => learnShare(method, { after, upTo, states })),
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
): SharePosterior {
  const byVariety = new Map<string, KeptCount[]>();
  for (const { batch, counts } of states) {
    const of = counts[after] ?? null;
    const kept = counts[upTo] ?? null;
    // Plants that went to another batch between the counts were not lost.
    if (of === null || kept === null || of === 0 || kept > of || batch.given > 0) continue;
    const list = byVariety.get(batch.variety);
    if (list === undefined) byVariety.set(batch.variety, [{ kept, of }]);
    else list.push({ kept, of });
  }
  const share = timetableShare(method, after, upTo);
  const lossSeen = [...byVariety.values()].some((list) => list.some(({ kept, of }) => kept < of));
  // Where neither the timetable nor the records know of a loss there is nothing to learn.
  if (share === 1 && !lossSeen) return sharePosterior(new Map(), share);
  return sharePosterior(
    new Map([...byVariety].map(([variety, list]) => [variety, shareCounts(list)])),
    share,
  );
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
    return { after, upTo, posterior: lazily(() => sharePosterior(new Map(), share)) };
  });
}
