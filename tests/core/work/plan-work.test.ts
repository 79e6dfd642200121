import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { CivilDay } from "../../../src/core/dates/civil-day";
import { NEVER_CLOSED, type Person } from "../../../src/core/work/crew";
import { planWork } from "../../../src/core/work/plan-work";
import type { WorkQuestion, WorkTask } from "../../../src/core/work/work-question";
import { able, daysOf, thereOn, workQuestions } from "./small-nursery";

const FIRST = 20_000 as CivilDay;
const ANA: Person = { name: "Ana", skills: null, hundredthsADay: 600, off: [] };

const task = (from: number, usual: number, by: number, asked: number, kind = "x"): WorkTask => ({
  ...{ kind, asked },
  ...{ from: (FIRST + from) as CivilDay, usual: (FIRST + usual) as CivilDay },
  by: (FIRST + by) as CivilDay,
});
const ask = (tasks: readonly WorkTask[], more: Partial<WorkQuestion> = {}) =>
  planWork({
    ...{ tasks, crew: [ANA], closed: NEVER_CLOSED, first: FIRST },
    ...{ last: (FIRST + 13) as CivilDay },
    ...more,
  });
const said = (plan: ReturnType<typeof planWork>) =>
  plan.pieces.map(({ task: of, day, hundredths }) => [of, day - FIRST, hundredths]);

describe("planWork", () => {
  it("does each task on its usual day where there is time", () => {
    expect(said(ask([task(1, 3, 5, 400), task(0, 4, 9, 600)]))).toEqual([
      [0, 3, 400],
      [1, 4, 600],
    ]);
  });

  it("splits what is too large for a day, and moves no more than it must", () => {
    const plan = ask([task(1, 3, 5, 1500)]);
    expect(plan.pieces.reduce((sum, { hundredths }) => sum + hundredths, 0)).toBe(1500);
    expect(plan.pieces.find(({ day }) => day === FIRST + 3)?.hundredths).toBe(600);
    expect(plan.overloads).toEqual([]);
    // 6 hours on the day, 9 hours one day off: no plan of 15 hours is nearer.
    const away = plan.pieces.map((one) => Math.abs(one.day - FIRST - 3) * one.hundredths);
    expect(away.reduce((sum, one) => sum + one, 0)).toBe(900);
  });

  it("does what is late first, whatever that does to the usual days of the others", () => {
    const plan = ask([task(0, 0, 2, 600), task(-9, -8, -3, 900)]);
    expect(said(plan)).toEqual(
      [
        [1, 0, 600],
        [1, 1, 300],
        [0, 1, 300],
        [0, 2, 300],
      ].sort((a, b) => (a[1] as number) - (b[1] as number) || (a[0] as number) - (b[0] as number)),
    );
  });

  it("keeps the windows of the others even against what is late", () => {
    const plan = ask([task(0, 0, 0, 600), task(-9, -8, -3, 900)]);
    expect(plan.unplaced).toEqual([0, 0]);
    expect(said(plan)[0]).toEqual([0, 0, 600]);
  });

  it("proves that a task does not fit: who, when, asked, there, short", () => {
    const plan = ask([task(1, 2, 2, 900), task(2, 3, 3, 1200), task(8, 8, 9, 100)]);
    expect(plan.overloads).toEqual([
      {
        ...{ tasks: [0, 1], from: FIRST + 1, to: FIRST + 3, persons: [0] },
        ...{ asked: 2100, there: 1800, short: 300 },
      },
    ]);
    expect(plan.unplaced.reduce((sum, one) => sum + one, 0)).toBe(300);
  });

  it("says of work that nobody does that nobody is there for it", () => {
    const plan = ask([task(1, 2, 2, 900, "a"), task(5, 6, 6, 50, "b"), task(2, 2, 2, 10)], {
      crew: [{ ...ANA, skills: new Set(["x"]) }],
    });
    expect(plan.overloads).toMatchObject([{ tasks: [0, 1], persons: [], there: 0, short: 950 }]);
  });

  it("lets wait what may be done after the plan, and what is late when there is no time", () => {
    const plan = ask([task(0, 0, 9, 5000), task(-9, -8, -3, 1000)], { last: FIRST });
    expect(plan.overloads).toEqual([]);
    expect(plan.after).toEqual([5000, 400]);
  });

  it("answers with nothing for no tasks, and with no hands for no crew", () => {
    expect(ask([])).toEqual({ pieces: [], after: [], unplaced: [], overloads: [] });
    expect(ask([task(0, 1, 2, 5)], { crew: [] }).overloads).toMatchObject([{ there: 0, short: 5 }]);
  });
});

describe("every plan", () => {
  const questions = workQuestions({ tasks: 12, days: 9, persons: 4, most: 40 });

  it("places, puts off or leaves over each hundredth of an hour of every task, once", () => {
    fc.assert(
      fc.property(questions, (question) => {
        const { pieces, after, unplaced } = planWork(question);
        question.tasks.forEach(({ asked }, at) => {
          const placed = pieces
            .filter((piece) => piece.task === at)
            .reduce((sum, { hundredths }) => sum + hundredths, 0);
          expect(placed + (after[at] as number) + (unplaced[at] as number)).toBe(asked);
        });
        for (const { hundredths } of pieces) expect(hundredths).toBeGreaterThan(0);
      }),
      { numRuns: 500 },
    );
  });

  it("gives nobody more than the hours of the day, and nothing on a day off or closed", () => {
    fc.assert(
      fc.property(questions, (question) => {
        const load = new Map<string, number>();
        for (const { person, day, hundredths } of planWork(question).pieces) {
          const sum = (load.get(`${person} ${day}`) ?? 0) + hundredths;
          load.set(`${person} ${day}`, sum);
          expect(sum).toBeLessThanOrEqual(thereOn(question, person, day));
        }
      }),
      { numRuns: 500 },
    );
  });

  it("keeps every window, and gives a task only to who can do it", () => {
    fc.assert(
      fc.property(questions, (question) => {
        for (const { task: at, person, day } of planWork(question).pieces) {
          const one = question.tasks[at] as WorkTask;
          expect(daysOf(question, one)).toContain(day);
          expect(able(question, person, one)).toBe(true);
        }
      }),
      { numRuns: 500 },
    );
  });

  it("has proofs that add up, of tasks apart, which leave over exactly what is short", () => {
    let proofs = 0;
    fc.assert(
      fc.property(questions, (question) => {
        const { overloads, unplaced } = planWork(question);
        for (const { tasks, asked, there, short, from, to, persons } of overloads) {
          proofs += 1;
          const list = tasks.map((at) => question.tasks[at] as WorkTask);
          expect(list.reduce((sum, one) => sum + one.asked, 0)).toBe(asked);
          // Every hour of every person on every day that can be given to any of these tasks.
          let hours = 0;
          for (let day = question.first; day <= question.last; day = (day + 1) as CivilDay) {
            question.crew.forEach((_, person) => {
              const useful = list.some(
                (one) => able(question, person, one) && daysOf(question, one).includes(day),
              );
              if (useful) hours += thereOn(question, person, day);
            });
          }
          expect(there).toBe(hours);
          expect(short).toBe(asked - there);
          expect(short).toBeGreaterThan(0);
          expect(from).toBe(Math.max(question.first, Math.min(...list.map((one) => one.from))));
          expect(to).toBe(Math.max(...list.map((one) => one.by)));
          const who = question.crew.flatMap((_, person) =>
            list.some((one) => able(question, person, one)) ? [person] : [],
          );
          expect(persons).toEqual(who);
          expect(tasks.reduce((sum, at) => sum + (unplaced[at] as number), 0)).toBe(short);
        }
        const named = overloads.flatMap(({ tasks }) => tasks);
        expect(new Set(named).size).toBe(named.length);
        unplaced.forEach((left, at) => {
          if (left > 0) expect(named).toContain(at);
        });
      }),
      { numRuns: 500 },
    );
    expect(proofs).toBeGreaterThan(100);
  });

  it("is mended by the hours that are short, and by not one hundredth less", () => {
    let mended = 0;
    fc.assert(
      fc.property(questions, (question) => {
        const { overloads, unplaced } = planWork(question);
        const helpers = question.tasks.flatMap((one, at): Person[] => {
          const left = unplaced[at] as number;
          const day = daysOf(question, one)[0] as CivilDay;
          if (left === 0) return [];
          const off = [
            { from: null, to: (day - 1) as CivilDay },
            { from: (day + 1) as CivilDay, to: null },
          ];
          return [{ name: `Helper ${at}`, skills: new Set([one.kind]), hundredthsADay: left, off }];
        });
        if (helpers.length === 0) return;
        mended += 1;
        const open = { ...question, closed: NEVER_CLOSED };
        const short = planWork(open).overloads.reduce((sum, one) => sum + one.short, 0);
        const given = helpers.reduce((sum, one) => sum + one.hundredthsADay, 0);
        expect(given).toBe(overloads.reduce((sum, one) => sum + one.short, 0));
        const enough = { ...open, crew: [...question.crew, ...helpers] };
        expect(planWork(enough).overloads).toEqual([]);
        if (short < given) return;
        const [first, ...others] = helpers as [Person, ...Person[]];
        const less = { ...first, hundredthsADay: first.hundredthsADay - 1 };
        const tooFew = planWork({ ...open, crew: [...question.crew, less, ...others] });
        expect(tooFew.overloads.reduce((sum, one) => sum + one.short, 0)).toBe(1);
      }),
      { numRuns: 500 },
    );
    expect(mended).toBeGreaterThan(100);
  });

  it("is the same for the same question", () => {
    fc.assert(
      fc.property(questions, (question) => {
        expect(planWork(question)).toEqual(planWork(question));
      }),
      { numRuns: 50 },
    );
  });
});
