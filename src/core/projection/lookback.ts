import type { Kinds } from "../answer";
import { type CivilDay, daysLater } from "../dates";
import type { Batch, LeftOut, Records } from "../records";
import { leftOutByMethod } from "../timetable";
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
  readonly dayHeld: boolean;
  /** Null where no count was forecast, or none was made. */
  readonly countHeld: boolean | null;
}

export interface Lookback {
  readonly rows: readonly LookbackRow[];
  readonly remarks: readonly LeftOut[];
}

/**
 * What the forecast would have said on an earlier day, knowing only what was recorded by then, and
 * how it held. A batch is listed once its outcome is known: it was ready, or the whole range of
 * days is past.
 */
export function lookback(question: LookbackQuestion): Lookback {
  const { records, asOf, daysBefore } = question;
  const then = daysLater(asOf, -daysBefore);
  const { batches, days, plants } = project({
    ...question,
    records: knownBy(records, then),
    asOf: then,
  });
  const readyColumn = (batch: Batch, key: string) => {
    const column = records.stepKeys.indexOf(key);
    const day = batch.days[column] ?? null;
    const isKnown = day !== null && day <= asOf;
    return { day: isKnown ? day : null, count: isKnown ? (batch.counts[column] ?? null) : null };
  };
  const rows: LookbackRow[] = [];
  batches.forEach(({ state }, index) => {
    if (state === null || !state.open || state.reached === -1 || isSilent(state)) return;
    const { method } = state;
    if (state.reached >= method.ready) return;
    const range = days.range(state, method.ready);
    const count = plants(state, method.ready);
    if (range === null) return;
    const now = records.batches[index] as Batch;
    const was = readyColumn(now, method.steps[method.ready]?.key ?? "");
    if (was.day === null && (now.closed || asOf <= range.by)) return;
    rows.push({
      batch: now.name,
      readyFrom: range.from,
      readyBy: range.by,
      wasReady: was.day,
      fewest: count?.fewest ?? null,
      most: count?.most ?? null,
      were: was.count,
      dayHeld: was.day !== null && was.day >= range.from && was.day <= range.by,
      countHeld:
        count === null || was.count === null
          ? null
          : was.count >= count.fewest && was.count <= count.most,
    });
  });
  return { rows, remarks: leftOutByMethod(question) };
}

/**
 * The records as they stood at the end of a day. A count is known once its own day, or the day of
 * a later step, is; what bears no day (plants culled, dispatched,
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
        closed: false,
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
