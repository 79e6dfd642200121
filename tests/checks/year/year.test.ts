import { describe, expect, it } from "vitest";
import type { CivilDay } from "../../../src/core/dates";
import { canWait, dayLines } from "../../../src/core/due";
import { isNonsense } from "../../support/nonsense";
import { diaryOf, isForToday, linesOf, pageOf } from "./foreman-diary";
import {
  DAYS_IN_YEAR,
  inventedYear,
  trulyForgotten,
  trulySold,
  trulyStanding,
} from "./invented-year";
import { BY_BUILT_IN, BY_OWN, dayOf, type Morning, morningOf, type PlayedBy } from "./nursery-book";

/** More lines than a foreman reads before work (our choice). */
const MOST_LINES = 12;

const batches = inventedYear();
const played = (by: PlayedBy) =>
  Array.from({ length: DAYS_IN_YEAR - 1 }, (_, at) => morningOf(batches, at + 1, by));

describe.each([
  ["the built-in methods", BY_BUILT_IN],
  ["its own timetable", BY_OWN],
])("a year of an invented nursery by %s, morning by morning", (_name, by) => {
  const mornings = played(by);
  const each = (look: (morning: Morning, today: number) => string[]): string[] =>
    mornings.flatMap((morning, at) => look(morning, at + 1).map((line) => `${at + 1} ${line}`));

  it("has five releases that were forgotten, of both crops", () => {
    const forgotten = batches.filter(({ forgottenFrom }) => forgottenFrom !== null);
    expect(forgotten.map(({ name }) => name)).toEqual(["C03", "C07", "C11", "M02", "M03"]);
  });

  it("names each forgotten release every day until it is done, and calls nothing else late", () => {
    const late = each(({ due }) =>
      due.rows
        .filter(({ status }) => status === "late")
        .map(({ batch, step }) => `${batch} ${step.name}`)
        .sort(),
    );
    const truth = each((_, today) =>
      trulyForgotten(batches, today)
        .map((name) => `${name} First release`)
        .sort(),
    );
    expect(truth.length).toBe(9 + 21 + 4 + 16 + 30);
    expect(late).toEqual(truth);
  });

  it("is never late with a look, and lists looks last", () => {
    const looks = each(({ due }) =>
      due.rows
        .filter(({ step, status }) => step.kind === "look" && status === "late")
        .map(({ batch }) => batch),
    );
    expect(looks).toEqual([]);
    const seen = mornings.map(({ due }) => due.rows.map(({ step }) => step.kind === "look"));
    expect(seen.some((kinds) => kinds.includes(true))).toBe(true);
    for (const kinds of seen)
      expect(kinds).toEqual([...kinds].sort((a, b) => Number(a) - Number(b)));
  });

  // As the page has it: a line a task that the day asks for; what can wait is one line a place, and so are the
  // looks; care a line for all places with the same. By the tab, which has a box for each, it is a line a task.
  it(`takes at most ${MOST_LINES} lines of nineteen days in twenty, looks and care among them`, () => {
    const most = quantile(mornings.map(linesOfDay), 0.95);
    expect(most).toBeGreaterThan(4);
    expect(most).toBeLessThanOrEqual(MOST_LINES);
  });

  it("leaves no task of the list out of its lines, and names what is late in a line of its own", () => {
    for (const [at, { due }] of mornings.entries()) {
      const lines = dayLines(dayTasks(due, dayOf(at + 1)));
      const names = (tasks: readonly { name: string }[]) => tasks.map(({ name }) => name).sort();
      expect(names(lines.flatMap(({ tasks }) => tasks))).toEqual(
        names(dayTasks(due, dayOf(at + 1))),
      );
      const alone = lines.filter(({ tasks }) => tasks.some(({ isLate }) => isLate));
      expect(alone.every(({ kind, tasks }) => kind === "task" && tasks.length === 1)).toBe(true);
      expect(alone).toHaveLength(due.rows.filter(({ status }) => status === "late").length);
    }
  });

  it(`is at most ${MOST_LINES} lines of any day, told as a foreman would`, () => {
    const known = new Set<string>();
    const lines = mornings.map((morning, at) => linesOf(pageOf(morning, at + 1, known)).length);
    expect(Math.max(...lines)).toBeLessThanOrEqual(MOST_LINES);
  });

  it("has no job for a batch that never came up, nor for a wrap that was not needed", () => {
    const dead = batches.find(({ germinated }) => germinated.count === 0);
    const once = batches.find(({ releasedAgain }) => releasedAgain === null);
    if (dead === undefined || once === undefined) throw new Error("the year has none");
    const jobs = each(({ due }, today) =>
      due.rows
        .filter(({ batch, step }) =>
          batch === dead.name
            ? today > dead.germinated.day
            : batch === once.name && step.key === "second release",
        )
        .map(({ batch, step }) => `${batch} ${step.name}`),
    );
    expect(jobs).toEqual([]);
    const others = each(({ due }) => due.rows.map(({ step }) => step.key));
    expect(others.some((line) => line.endsWith("second release"))).toBe(true);
  });

  it("knows of every plant on every day, and at the end where each one went", () => {
    const standing = each(({ standing }) =>
      [...standing].map(([name, plants]) => `${name} ${plants}`),
    );
    const truth = each((_, today) =>
      batches
        .filter(({ sown }) => sown.day < today)
        .map((batch) => `${batch.name} ${trulyStanding(batch, today - 1)}`),
    );
    expect(standing).toEqual(truth);
    const end = mornings[mornings.length - 1] as Morning;
    for (const batch of batches) {
      const counts = [batch.sown, batch.germinated, batch.grafted, batch.taken, batch.ready]
        .filter(({ day }) => day < DAYS_IN_YEAR - 1)
        .map(({ count }) => count);
      const lost = (counts[0] ?? 0) - (counts.includes(0) ? 0 : (counts[counts.length - 1] ?? 0));
      const sold = trulySold(batch, DAYS_IN_YEAR - 2);
      expect([batch.name, lost + sold + (end.standing.get(batch.name) ?? 0)]).toEqual([
        batch.name,
        batch.sown.count,
      ]);
    }
  });

  // `npx vitest run tests/checks/year -u` writes it anew; it is there to be read.
  it.skipIf(isNonsense || by !== BY_BUILT_IN)("reads as a diary", async () => {
    const figures = (lines: readonly number[]) =>
      [0.5, 0.95, 1].map((share) => quantile(lines, share)).join(", ");
    const known = new Set<string>();
    const head = [
      "# A year of an invented nursery",
      "",
      "Written by `tests/checks/year/year.test.ts`. Nothing in it is real. Each morning: what was done the day",
      "before, then what the due list says by the built-in methods, told by step.",
      "",
      "Lines a morning, at the middle, at 95 of 100 mornings, at most:",
      "",
      `- The due list, a line a task and a batch: ${figures(mornings.map(({ due }) => due.rows.length + due.remarks.length))}`,
      `- The same without looks: ${figures(mornings.map(rowsBesidesLooks))}`,
      `- As the page has it, what can wait a line a place, and looks too: ${figures(mornings.map(linesOfDay))}`,
      `- Of the tasks late, or with the usual day come: ${figures(mornings.map(({ due }, at) => due.rows.filter((task) => isForToday(task, dayOf(at + 1))).length))}`,
      `- As told here, all of it: ${figures(mornings.map((morning, at) => linesOf(pageOf(morning, at + 1, known)).length))}`,
      "",
      "",
    ];
    await expect(head.join("\n") + diaryOf(mornings, batches)).toMatchFileSnapshot("diary.md");
  });
});

const dayTasks = ({ rows }: Morning["due"], today: CivilDay) =>
  rows.map((task) => ({
    ...{ name: `${task.batch} ${task.step.key}`, isLate: task.status === "late" },
    ...{ place: task.place, isLook: task.step.kind === "look", canWait: canWait(task, today) },
  }));

const linesOfDay = ({ due }: Morning, at: number): number =>
  dayLines(dayTasks(due, dayOf(at + 1))).length + due.remarks.length;

const rowsBesidesLooks = ({ due }: Morning): number =>
  due.rows.filter(({ step }) => step.kind !== "look").length + due.remarks.length;

/** The number that so large a share of them does not pass. */
function quantile(of: readonly number[], share: number): number {
  const sorted = [...of].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
}
