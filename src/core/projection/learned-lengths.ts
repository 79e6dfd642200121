import type { CivilDay } from "../dates";
import { lazily } from "../lazily";
import { madeOnce } from "../made-once";
import {
  learnedLength,
  type RecordedLengths,
  type StepLength,
  type StepWindow,
  scaledLength,
  type WeighedPrior,
  windowLength,
  withLateTail,
} from "../statistics";
import type { Method, Step } from "../timetable";
import type { BatchState } from "./batch-state";
import { changeOfLengths, dayAbout, type LengthChange } from "./changes";
import type { Forecaster, Way } from "./forecaster";
import { isSilent } from "./silence";

/** Batches that the timetable's days are worth beside the nursery's own (our choice). */
const TIMETABLE_WORTH = 3;

/** How long the steps of one method take. */
export interface LearnedLengths extends Pick<Forecaster, "straight"> {
  length(step: Step, from: CivilDay | null): StepLength;
}

/**
 * Learned of batches that were seen to pass a step, and of batches still waiting for it; a batch that
 * went on without the step being recorded says nothing of it, nor does one that fell silent long
 * ago. What the day did to them is taken away first, and comes to what is asked of a day.
 */
export function learnedLengths(method: Method, states: readonly BatchState[]): LearnedLengths {
  const records = lazily(() => ({ states, change: changeOfLengths(method, states) }));
  const learned = new Map<string, StepLength | null>();
  const onDays = new Map<StepLength, (from: CivilDay) => StepLength>();
  const onDay = (length: StepLength, way: Way): StepLength => {
    const { change } = records();
    if (way.from === null || change === null) return length;
    const scaled = madeOnce(onDays, length, () => {
      const effect = change.along(way);
      const known = new Map<CivilDay, StepLength>();
      return (from: CivilDay) => madeOnce(known, from, () => scaledLength(length, effect(from)));
    });
    return scaled(dayAbout(way.from));
  };
  return {
    length: (step, from) => {
      const way = { ...wayOf(method, step), from };
      const length = madeOnce(learned, `${way.upTo}`, () => lengthOf(way, step, records()));
      return onDay(length as StepLength, way);
    },
    straight: (way) => {
      const { after, upTo } = way;
      const length = madeOnce(learned, `${after} ${upTo}`, () => straightLength(way, records()));
      return length === null ? null : onDay(length, way);
    },
  };
}

/** A method's batches, and what a day did to how long they took. */
interface MethodRecords {
  readonly states: readonly BatchState[];
  readonly change: LengthChange | null;
}

/** A step alone, from the one that it is counted from. */
function wayOf(method: Method, step: Step): Way {
  return { method, after: step.after ?? -1, upTo: method.steps.indexOf(step), from: null };
}

function lengthOf(way: Way, step: Step, records: MethodRecords): StepLength {
  const recorded = step.after === null ? { done: [], waiting: [] } : recordedBetween(records, way);
  return learnedWithTail({ length: windowLength(step), weight: TIMETABLE_WORTH }, recorded);
}

/**
 * How many days batches took from one step to another, and how many those have waited that still do: as
 * they would have without what their days did.
 */
function recordedBetween({ states, change }: MethodRecords, way: Way): RecordedLengths {
  const { after, upTo } = way;
  const effect = change?.along(way);
  const done: number[] = [];
  const waiting: number[] = [];
  for (const state of states) {
    const start = state.doneOn[after] ?? null;
    if (start === null) continue;
    const day = state.doneOn[upTo] ?? null;
    const without = (days: number) =>
      effect === undefined ? days : Math.round(days * Math.exp(-effect(start).shift));
    if (day !== null) {
      if (day >= start) done.push(without(day - start));
    } else if (state.open && upTo > state.reached && state.recordable[upTo] && !isSilent(state)) {
      waiting.push(without(state.asOf - start));
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

function straightLength(way: Way, records: MethodRecords): StepLength | null {
  const recorded = recordedBetween(records, way);
  if (recorded.done.length < FEWEST_SEEN) return null;
  const window = windowLength(windowBetween(way));
  return learnedWithTail({ length: window, weight: WINDOW_WORTH }, recorded);
}

function learnedWithTail(prior: WeighedPrior, recorded: RecordedLengths): StepLength {
  return withLateTail(learnedLength(prior.length, prior.weight, recorded), prior, recorded);
}

/**
 * The timetable's window between two steps, from their days since the start. What is early and late
 * at the two ends adds up as independent lengths do, by squares.
 */
function windowBetween({ method, after, upTo }: Way): StepWindow {
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
