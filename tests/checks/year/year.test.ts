import { describe, expect, it } from "vitest";
import { dayWords } from "../../../src/wording/days";
import { recordsRemarks } from "../../../src/wording/records";
import { isNonsense } from "../../support/nonsense";
import {
  DAYS_IN_YEAR,
  inventedYear,
  trulyForgotten,
  trulySold,
  trulyStanding,
} from "./invented-year";
import { BY_BUILT_IN, dayOf, type Morning, morningOf } from "./nursery-book";

/** More lines than a foreman reads before work (our choice). */
const MOST_LINES = 12;

const batches = inventedYear();
const mornings = Array.from({ length: DAYS_IN_YEAR - 1 }, (_, at) => morningOf(batches, at + 1));
const each = (look: (morning: Morning, today: number) => string[]): string[] =>
  mornings.flatMap((morning, at) => look(morning, at + 1).map((line) => `${at + 1} ${line}`));

describe("a year of an invented nursery, morning by morning", () => {
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

  it(`takes at most ${MOST_LINES} lines of any day`, () => {
    expect(Math.max(...mornings.map((morning) => linesOf(morning).length))).toBeLessThanOrEqual(
      MOST_LINES,
    );
  });

  // Looks stand last and can be switched off. A day with more is one with many graftings.
  it("takes no more of nineteen days in twenty by the built-in methods, with their care and work ahead", () => {
    const lines = mornings
      .map((_, at) => {
        const { due, ...morning } = morningOf(batches, at + 1, BY_BUILT_IN);
        const rows = due.rows.filter(({ step }) => step.kind !== "look");
        return linesOf({ ...morning, due: { ...due, rows } }).length;
      })
      .sort((a, b) => a - b);
    const most = lines[Math.floor(0.95 * lines.length)];
    expect(most).toBeGreaterThan(4);
    expect(most).toBeLessThanOrEqual(MOST_LINES);
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
  it.skipIf(isNonsense)("reads as a diary", async () => {
    const pages = mornings.flatMap((morning, at) => {
      const lines = linesOf(morning);
      return lines.length === 0
        ? []
        : [`## ${dayWords(dayOf(at + 1))}`, "", ...lines.map((line) => `- ${line}`), ""];
    });
    const head = [
      "# A year of an invented nursery",
      "",
      "Written by `tests/checks/year/year.test.ts`. Nothing in it is real.",
      "",
    ];
    await expect([...head, ...pages].join("\n")).toMatchFileSnapshot("diary.md");
  });
});

function linesOf({ due }: Morning): string[] {
  const tasks = due.rows.map(({ step, batch, place, plants, status, daysLate }) => {
    const late =
      status === "late" ? ` **${daysLate} ${daysLate === 1 ? "day" : "days"} late**` : "";
    return `${step.name}: ${batch}, ${place}, ${plants ?? "?"} plants${late}`;
  });
  const remarks = due.remarks.map((one) => recordsRemarks([one], "page") ?? "");
  return [...tasks, ...remarks];
}
