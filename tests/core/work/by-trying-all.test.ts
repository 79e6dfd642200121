import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { planWork } from "../../../src/core/work/plan-work";
import type { WorkQuestion, WorkTask } from "../../../src/core/work/work-question";
import {
  able,
  awayOn,
  dayAfter,
  daysOf,
  mayWait,
  type Score,
  scoreOf,
  thereOn,
  workQuestions,
} from "./small-nursery";

const NOTHING: Score = { leftOver: 0, waiting: 0, away: 0 };

/** Less left over is better; then less waiting of late tasks; then nearer to the usual days. */
function better(a: Score, b: Score): Score {
  const less = a.leftOver - b.leftOver || a.waiting - b.waiting || a.away - b.away;
  return less <= 0 ? a : b;
}

/**
 * The best plan by trying every place for every hundredth of an hour; what was tried before from the
 * same time left is remembered, and nothing else is clever.
 */
function bestByTryingAll(question: WorkQuestion): Score {
  const { tasks, crew, first, last } = question;
  const units = tasks.flatMap((task) => Array<WorkTask>(task.asked).fill(task));
  const known = new Map<string, Score>();
  const best = (unit: number, left: readonly number[]): Score => {
    const task = units[unit];
    if (task === undefined) return NOTHING;
    const key = `${unit} ${left.join(" ")}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const late = task.by < first;
    const on = (day: number, rest: Score): Score => {
      const days = awayOn(question, task, day);
      const { leftOver, waiting, away } = rest;
      return late
        ? { leftOver, waiting: waiting + days, away }
        : { leftOver, waiting, away: away + days };
    };
    const rest = best(unit + 1, left);
    let found = mayWait(question, task)
      ? on(dayAfter(question, task), rest)
      : { ...rest, leftOver: rest.leftOver + 1 };
    for (const day of daysOf(question, task)) {
      crew.forEach((_, person) => {
        const index = person * (last - first + 1) + (day - first);
        if (!able(question, person, task) || left[index] === 0) return;
        const used = left.map((room, at) => (at === index ? room - 1 : room));
        found = better(found, on(day, best(unit + 1, used)));
      });
    }
    known.set(key, found);
    return found;
  };
  const room = crew.flatMap((_, person) =>
    Array.from({ length: last - first + 1 }, (_, at) => thereOn(question, person, first + at)),
  );
  return best(0, room);
}

describe("planWork against trying all plans", () => {
  it("fits where any plan fits, and none is nearer to the usual days, in 500 small cases", () => {
    const seen = { fits: 0, doesNot: 0, late: 0, moved: 0 };
    fc.assert(
      fc.property(workQuestions({ tasks: 4, days: 4, persons: 3, most: 3 }), (question) => {
        const plan = planWork(question);
        const score = scoreOf(question, plan);
        expect(score).toEqual(bestByTryingAll(question));
        expect(plan.overloads.length === 0).toBe(score.leftOver === 0);
        seen[score.leftOver === 0 ? "fits" : "doesNot"] += 1;
        if (score.waiting > 0) seen.late += 1;
        if (score.away > 0) seen.moved += 1;
      }),
      { numRuns: 500 },
    );
    // Each sort of case must have been seen often enough for the 500 to show something.
    expect(seen.fits + seen.doesNot).toBe(500);
    for (const times of Object.values(seen)) expect(times).toBeGreaterThan(50);
  });
});
