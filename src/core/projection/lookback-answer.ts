import { type Answer, type AnswerValue, columns } from "../answer";
import { type CivilDay, daysLater } from "../dates/civil-day";
import type { Batch } from "../records/batch";
import { leftOutRemark, type Records } from "../records/records";
import { type ProjectionQuestion, project } from "./project";
import { isSilent } from "./silence";

const COLUMNS = columns({
  Batch: "text",
  "Ready from": "day",
  "Ready by": "day",
  "Was ready": "day",
  Fewest: "count",
  Most: "count",
  Were: "count",
  "Day held": "text",
  "Count held": "text",
});

export interface LookbackQuestion extends ProjectionQuestion {
  /** How many days before the as-of day to stand; whole, 1 or more. */
  readonly daysBefore: number;
}

/**
 * What the forecast would have said on an earlier day, knowing only what was recorded by then, and
 * how it held. A batch is listed once its outcome is known: it was ready, or the whole range of
 * days is past.
 */
export function lookbackAnswer(question: LookbackQuestion): Answer {
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
  const rows: AnswerValue[][] = [];
  const held = { days: 0, ofDays: 0, counts: 0, ofCounts: 0 };
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
    const dayHeld = was.day !== null && was.day >= range.from && was.day <= range.by;
    const countHeld =
      count === null || was.count === null
        ? null
        : was.count >= count.fewest && was.count <= count.most;
    held.ofDays += 1;
    if (dayHeld) held.days += 1;
    if (countHeld !== null) held.ofCounts += 1;
    if (countHeld === true) held.counts += 1;
    rows.push([
      now.name,
      range.from,
      range.by,
      was.day,
      count?.fewest ?? null,
      count?.most ?? null,
      was.count,
      dayHeld ? "yes" : "no",
      countHeld === null ? null : countHeld ? "yes" : "no",
    ]);
  });
  rows.push([
    rows.length === 0 ? "No batch was forecast then whose outcome is known now" : "Held",
    ...Array<null>(6).fill(null),
    held.ofDays === 0 ? null : `${held.days} of ${held.ofDays}`,
    held.ofCounts === 0 ? null : `${held.counts} of ${held.ofCounts}`,
  ]);
  return { columns: COLUMNS, rows, remark: leftOutRemark(records) };
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
