import fc from "fast-check";
import loadHighs from "highs";
import { beforeAll, describe, expect, it } from "vitest";
import { planWork } from "../../../src/core/work/plan-work";
import type { WorkQuestion } from "../../../src/core/work/work-question";
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

/** One unknown of the linear program: so much of a task, on a day with a person, or after the plan. */
interface Unknown {
  readonly name: string;
  readonly task: number;
  readonly slot: string | null;
  readonly days: number;
  readonly late: boolean;
}

let solver: Awaited<ReturnType<typeof loadHighs>>;
beforeAll(async () => {
  solver = await loadHighs();
});

/** The least of a sum under lines of constraints, by HiGHS. */
function least(objective: string, lines: readonly string[]): number {
  const text = `Minimize\n o: ${objective}\nSubject To\n${lines.map((line, at) => ` c${at}: ${line}`).join("\n")}\nEnd`;
  const solved = solver.solve(text, { output_flag: false });
  if (solved.Status !== "Optimal") throw new Error(`the solver says ${solved.Status}`);
  return solved.ObjectiveValue;
}

/** The best score, one aim after another: what is left over, then waiting, then days away. */
function bestByLinearProgram(question: WorkQuestion): Score {
  const unknowns: Unknown[] = question.tasks.flatMap((task, at) => {
    const late = task.by < question.first;
    const of = { task: at, late };
    const placed = daysOf(question, task).flatMap((day) =>
      question.crew.flatMap((_, person) => {
        if (!able(question, person, task) || thereOn(question, person, day) === 0) return [];
        const slot = `${person} ${day}`;
        const name = `x${at}_${day}_${person}`;
        return [{ ...of, name, slot, days: awayOn(question, task, day) }];
      }),
    );
    const days = awayOn(question, task, dayAfter(question, task));
    return mayWait(question, task)
      ? [...placed, { ...of, name: `w${at}`, slot: null, days }]
      : placed;
  });
  const sum = (list: readonly Unknown[]) => list.map(({ name }) => name).join(" + ");
  const weighted = (list: readonly Unknown[]) =>
    list.map(({ name, days }) => `${days} ${name}`).join(" + ") || "0 nothing";
  const lines: string[] = [];
  question.tasks.forEach(({ asked }, at) => {
    const own = unknowns.filter(({ task }) => task === at);
    lines.push(`${sum([...own, { name: `left${at}` } as Unknown])} = ${asked}`);
  });
  for (const slot of new Set(unknowns.flatMap((one) => one.slot ?? []))) {
    const [person, day] = slot.split(" ").map(Number) as [number, number];
    const own = unknowns.filter((one) => one.slot === slot);
    lines.push(`${sum(own)} <= ${thereOn(question, person, day)}`);
  }
  if (lines.length === 0) return { leftOver: 0, waiting: 0, away: 0 };
  const left = question.tasks.map((_, at) => `left${at}`).join(" + ");
  const late = weighted(unknowns.filter((one) => one.late));
  const others = weighted(unknowns.filter((one) => !one.late));
  const leftOver = Math.round(least(left, lines));
  lines.push(`${left} <= ${leftOver}`);
  const waiting = Math.round(least(late, lines));
  lines.push(`${late} <= ${waiting}`);
  return { leftOver, waiting, away: Math.round(least(others, lines)) };
}

const LARGER = workQuestions({ tasks: 80, days: 20, persons: 12, most: 800, fewest: 8 });

describe("planWork against a linear program (HiGHS)", () => {
  it("leaves over, keeps waiting and moves exactly as little, in 40 larger cases", () => {
    const seen = { fits: 0, doesNot: 0, moved: 0 };
    fc.assert(
      fc.property(LARGER, (question) => {
        const score = scoreOf(question, planWork(question));
        expect(score).toEqual(bestByLinearProgram(question));
        seen[score.leftOver === 0 ? "fits" : "doesNot"] += 1;
        if (score.away > 0) seen.moved += 1;
      }),
      { numRuns: 40 },
    );
    expect(seen.fits).toBeGreaterThan(5);
    expect(seen.doesNot).toBeGreaterThan(5);
    expect(seen.moved).toBeGreaterThan(5);
  });
});
