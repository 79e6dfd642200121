import fc from "fast-check";
import type { CivilDay } from "../../../src/core/dates/civil-day";
import type { ClosedDays, Person } from "../../../src/core/work/crew";
import type { WorkPlan } from "../../../src/core/work/plan-work";
import type { WorkQuestion, WorkTask } from "../../../src/core/work/work-question";

const KINDS = ["sowing", "grafting", "ready"];

/** How large the random questions are. */
interface Sizes {
  readonly tasks: number;
  readonly days: number;
  readonly persons: number;
  readonly most: number;
  /** Persons at least, and five times as many tasks; 0 if left out. */
  readonly fewest?: number;
}

/** Questions of any kind: windows within the plan and beyond it, late tasks, days off, closed days. */
export function workQuestions({
  tasks,
  days,
  persons,
  most,
  fewest = 0,
}: Sizes): fc.Arbitrary<WorkQuestion> {
  const first = 20_000 as CivilDay;
  const day = (from: number, to: number) =>
    fc.integer({ min: from, max: to }).map((after) => (first + after) as CivilDay);
  const task: fc.Arbitrary<WorkTask> = fc
    .tuple(
      fc.constantFrom(...KINDS),
      fc.uniqueArray(day(-2, days + 1), { minLength: 1, maxLength: 3 }),
      fc.integer({ min: 1, max: most }),
    )
    .map(([kind, window, asked]) => {
      const [from, ...more] = window.sort((a, b) => a - b) as [CivilDay, ...CivilDay[]];
      return { kind, from, usual: more[0] ?? from, by: more.at(-1) ?? from, asked };
    });
  const stretch = fc
    .tuple(day(0, days), fc.nat({ max: 1 }))
    .map(([from, more]) => ({ from, to: (from + more) as CivilDay }));
  const person: fc.Arbitrary<Person> = fc
    .tuple(
      fc.constantFrom("Ana", "Bo", "Cem", "Dora"),
      fc.option(fc.subarray(KINDS), { freq: 3 }),
      fc.nat({ max: most }),
      fc.array(stretch, { maxLength: 1 }),
    )
    .map(([name, skills, hundredthsADay, off]) => ({
      ...{ name, skills: skills === null ? null : new Set(skills), hundredthsADay, off },
    }));
  const closed: fc.Arbitrary<ClosedDays> = fc
    .tuple(fc.array(stretch, { maxLength: 1 }), fc.subarray([1, 7], { maxLength: 1 }))
    .map(([stretches, weekdays]) => ({ stretches, weekdays: new Set(weekdays) }));
  return fc
    .tuple(
      fc.array(task, { minLength: fewest * 5, maxLength: tasks }),
      fc.array(person, { minLength: fewest, maxLength: persons }),
      closed,
      fc.integer({ min: 1, max: days }),
    )
    .map(([list, crew, shut, length]) => ({
      ...{ tasks: list, crew, closed: shut, first },
      last: (first + length - 1) as CivilDay,
    }));
}

/** Hours that a person has on a day, read off the question anew. */
export function thereOn({ crew, closed }: WorkQuestion, person: number, day: number): number {
  const one = crew[person] as Person;
  const in_ = (list: Person["off"]) =>
    list.some(({ from, to }) => (from as number) <= day && day <= (to as number));
  // 1970-01-01 was a Thursday, day 4 of the week.
  const weekday = ((day + 3) % 7) + 1;
  if (in_(closed.stretches) || closed.weekdays.has(weekday) || in_(one.off)) return 0;
  return one.hundredthsADay;
}

export function able({ crew }: WorkQuestion, person: number, task: WorkTask): boolean {
  const { skills } = crew[person] as Person;
  return skills === null || skills.has(task.kind);
}

/** The days of the plan on which a task may be done. */
export function daysOf({ first, last }: WorkQuestion, { from, by }: WorkTask): number[] {
  const end = by < first ? last : Math.min(by, last);
  const days: number[] = [];
  for (let day = Math.max(from, first); day <= end; day += 1) days.push(day);
  return days;
}

/** Days from the usual day, or of waiting for a late task; a usual day that is past is the first. */
export function awayOn({ first }: WorkQuestion, { usual, by }: WorkTask, day: number): number {
  return by < first ? day - first : Math.abs(day - Math.max(usual, first));
}

/** What a plan leaves over, what its late tasks wait, and how far the others are from their days. */
export interface Score {
  readonly leftOver: number;
  readonly waiting: number;
  readonly away: number;
}

/** The score of what planWork answers, added up anew. */
export function scoreOf(question: WorkQuestion, plan: WorkPlan): Score {
  let waiting = 0;
  let away = 0;
  const add = (task: number, day: number, hundredths: number) => {
    const one = question.tasks[task] as WorkTask;
    const days = awayOn(question, one, day) * hundredths;
    if (one.by < question.first) waiting += days;
    else away += days;
  };
  for (const { task, day, hundredths } of plan.pieces) add(task, day, hundredths);
  plan.after.forEach((hundredths, task) => {
    add(task, dayAfter(question, question.tasks[task] as WorkTask), hundredths);
  });
  const leftOver = plan.unplaced.reduce((sum, one) => sum + one, 0);
  return { leftOver, waiting, away };
}

/** The day after the plan on which a task that waits is nearest to its usual day. */
export function dayAfter({ first, last }: WorkQuestion, { usual, by }: WorkTask): number {
  return by < first ? last + 1 : Math.max(usual, last + 1);
}

/** Whether a task may wait until after the plan. */
export function mayWait({ first, last }: WorkQuestion, { by }: WorkTask): boolean {
  return by < first || by > last;
}
