import type { Kinds } from "../answer";
import { type CivilDay, daysLater } from "../dates";
import type { Batch, LeftOut, Records } from "../records";
import { leftOutByMethod } from "../timetable";
import { type BatchState, stateFinder } from "./batch-state";
import { type Duel, type PlainRuleTally, plainRule, plainRuleTally } from "./plain-rule";
import { type ProjectionQuestion, project } from "./project";
import { isSilent } from "./silence";

export const LOOKBACK_COLUMNS = {
  batch: "text",
  readyFrom: "day",
  readyBy: "day",
  wasReady: "day",
  fewest: "count",
  most: "count",
  were: "count",
  dayHeld: "text",
  countHeld: "text",
} as const satisfies Kinds;

export interface LookbackQuestion extends ProjectionQuestion {
  /** How many days before the as-of day to stand; whole, 1 or more. */
  readonly daysBefore: number;
}

/** What was forecast of a batch, and what came of it. */
export interface LookbackRow {
  readonly batch: string;
  readonly readyFrom: CivilDay;
  readonly readyBy: CivilDay;
  readonly wasReady: CivilDay | null;
  readonly fewest: number | null;
  readonly most: number | null;
  readonly were: number | null;
  /** Null where plants were ready, but on no day that is written. */
  readonly dayHeld: boolean | null;
  /** Null where no count was forecast, or none was made. */
  readonly countHeld: boolean | null;
}

export interface Lookback {
  readonly rows: readonly LookbackRow[];
  /** Batches forecast then that cannot be judged yet: part of their range of days is still to come. */
  readonly notYet: number;
  /** Batches forecast then of which all plants went on as other batches: nothing of theirs becomes ready. */
  readonly goneOn: number;
  /** Batches counted as dead that were closed on no written day: some may have been closed before that day. */
  readonly undated: number;
  /** How a plain rule did on the same batches; null where it had too few finished ones to go by. */
  readonly plain: { readonly days: PlainRuleTally | null; readonly plants: PlainRuleTally | null };
  readonly remarks: readonly LeftOut[];
}

/**
 * What the forecast would have said on an earlier day, knowing only what was recorded by then, and
 * how it held. A batch is judged when its whole range of days is past, whatever became of it: to judge
 * those first that were early would be too kind. One that died had no plants ready, and on no day.
 */
export function lookback(question: LookbackQuestion): Lookback {
  const { records, asOf, daysBefore, level } = question;
  const then = daysLater(asOf, -daysBefore);
  const { batches, days, plants } = project({
    ...question,
    records: knownBy(records, then),
    asOf: then,
  });
  const plainly = plainRule(
    batches.flatMap(({ state }) => state ?? []),
    level,
  );
  const stateNow = stateFinder(records, asOf);
  const rows: LookbackRow[] = [];
  const duels: { readonly days: Duel[]; readonly plants: Duel[] } = { days: [], plants: [] };
  let notYet = 0;
  let goneOn = 0;
  let undated = 0;
  batches.forEach(({ state }, index) => {
    if (state === null || !state.open || state.reached === -1 || isSilent(state)) return;
    const { method } = state;
    if (state.reached >= method.ready) return;
    const range = days.range(state, method.ready);
    const count = plants(state, method.ready);
    if (range === null) return;
    if (asOf <= range.by) {
      notYet += 1;
      return;
    }
    const now = records.batches[index] as Batch;
    const became = whatBecame(stateNow(now, method), state.plants);
    if (became === "went-on") {
      goneOn += 1;
      return;
    }
    const { day, were } = became;
    if (day === null && were === 0 && now.closed && now.closedOn === null) undated += 1;
    const dayHeld = day === null ? (were ? null : false) : day >= range.from && day <= range.by;
    rows.push({
      batch: now.name,
      readyFrom: range.from,
      readyBy: range.by,
      wasReady: day,
      fewest: count?.fewest ?? null,
      most: count?.most ?? null,
      were,
      dayHeld,
      countHeld:
        count === null || were === null ? null : were >= count.fewest && were <= count.most,
    });
    const plain = plainly(state);
    if (plain.days !== null && dayHeld !== null) {
      const ours = { low: range.from, high: range.by };
      duels.days.push({ ours, plain: plain.days, truth: day, unit: 1 });
    }
    if (plain.plants !== null && count !== null && were !== null) {
      const ours = { low: count.fewest, high: count.most };
      duels.plants.push({ ours, plain: plain.plants, truth: were, unit: state.plants || 1 });
    }
  });
  return {
    rows,
    notYet,
    goneOn,
    undated,
    plain: {
      days: plainRuleTally(duels.days, level),
      plants: plainRuleTally(duels.plants, level),
    },
    remarks: leftOutByMethod(question),
  };
}

/**
 * What became of a batch by the as-of day. Plants that left for customers had been ready, if nobody wrote
 * when; a batch that stands no more, of which nothing was ready nor sold, died. One of which most plants
 * went to other batches went on as those.
 *
 * @param stood plants that stood then
 */
function whatBecame(
  { batch, method, doneOn, counts, open }: BatchState,
  stood: number | null,
): "went-on" | { readonly day: CivilDay | null; readonly were: number | null } {
  const day = doneOn[method.ready] ?? null;
  const counted = counts[method.ready] ?? null;
  if (day !== null || counted !== null) return { day, were: counted };
  if (open) return { day, were: null };
  const sold = batch.dispatched ?? 0;
  return sold === 0 && batch.given > 0 && 2 * batch.given >= (stood ?? 0)
    ? "went-on"
    : { day, were: sold };
}

/**
 * The records as they stood at the end of a day. A count is known once its own day, or the day of
 * a later step, is; a batch was closed if its day of closing says so. What bears no day (plants culled, dispatched,
 * given or received, closing) is not known.
 */
function knownBy(records: Records, then: CivilDay): Records {
  return {
    ...records,
    batches: records.batches.map((batch): Batch => {
      let latest = -1;
      batch.days.forEach((day, index) => {
        if (day !== null && day <= then) latest = index;
      });
      return {
        ...batch,
        culled: null,
        dispatched: null,
        given: 0,
        givenBeforeCount: 0,
        received: null,
        closed: batch.closedOn !== null && batch.closedOn <= then,
        days: batch.days.map((day) => (day !== null && day <= then ? day : null)),
        counts: batch.counts.map((count, index) => {
          const day = batch.days[index] ?? null;
          const known = day === null ? index < latest : day <= then;
          return known ? count : null;
        }),
      };
    }),
  };
}
