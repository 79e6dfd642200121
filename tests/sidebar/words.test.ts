import { describe, expect, it } from "vitest";
import * as controlsText from "../../src/sentences/made/controls";
import { cut } from "../../src/sentences/made/controls";
import * as days from "../../src/sentences/made/days";
import * as takesPage from "../../src/sentences/made/takes-page";
import * as todayPage from "../../src/sentences/made/today-page";
import { count, list, share } from "../../src/sentences/runtime";
import { countText, percentText, shareText } from "../../src/sidebar/controls/count-words";
import { dayText, monthText, windowText } from "../../src/sidebar/controls/day-words";
import { isolated, shortened } from "../../src/sidebar/controls/shortened";
import { countWords, rangeWords } from "../../src/sidebar/takes/group-item";
import { hoursWords, plantsWords, statusWords } from "../../src/sidebar/today/task-words";
import { takeCount } from "./fixed-answers";
import { takes } from "./take-answers";

describe("countText", () => {
  it.each([
    [0, "0"],
    [999, "999"],
    [1000, "1,000"],
    [50_000, "50,000"],
    [1_234_567, "1,234,567"],
    [-1500, "−1,500"],
  ])("%d is %s", (number, text) => {
    expect(countText(number)).toBe(controlsText.number({ number }));
    expect(count(number)).toBe(text);
  });
});

describe("names and shares", () => {
  it("are joined as a sentence has them", () => {
    const all = [[], ["a"], ["a", "b"], ["a", "b", "c"]];
    expect(all.map(list)).toEqual(["", "a", "a and b", "a, b and c"]);
  });

  it("say a share of 1 in hundredths, and nothing where there is none", () => {
    const all = [0, 0.784, 0.995, 1];
    expect(all.map(percentText)).toEqual(all.map((part) => controlsText.percent({ part })));
    expect([...all, null].map(shareText)).toEqual([...all.map(percentText), ""]);
    expect(all.map(share)).toEqual(["0", "78", "100", "100"].map((one) => `${one}\u00a0%`));
  });
});

describe("days", () => {
  const nov = days.monthName({ number: "11" });
  const dec = days.monthName({ number: "12" });
  const day = (number: string, month: string, year: string) =>
    days.day({ day: number, month, year });

  it.each([
    ["2026-11-05", "2026-11-05", day("5", nov, "2026")],
    ["2026-11-10", "2026-11-16", days.window({ from: "10", by: day("16", nov, "2026") })],
    [
      "2026-11-26",
      "2026-12-03",
      days.window({
        from: days.dayMonth({ day: "26", month: nov }),
        by: day("3", dec, "2026"),
      }),
    ],
    [
      "2026-12-30",
      "2027-01-02",
      days.window({
        from: day("30", dec, "2026"),
        by: day("2", days.monthName({ number: "1" }), "2027"),
      }),
    ],
    ["soon", "2026-12-03", days.window({ from: "soon", by: day("3", dec, "2026") })],
  ])("from %s by %s is %s", (from, by, text) => expect(windowText(from, by)).toBe(text));

  it("that are none stay as they are", () => {
    expect(["", "2026-13-01", "26-11-05", "2026-11"].map(dayText)).toEqual([
      ...["", "2026-13-01", "26-11-05", "2026-11"],
    ]);
  });

  it("have months", () => {
    expect(["2026-11", "2027-01", "2026-00", "All"].map(monthText)).toEqual([
      days.month({ month: days.monthName({ number: "11" }), year: "2026" }),
      days.month({ month: days.monthName({ number: "1" }), year: "2027" }),
      ...["2026-00", "All"],
    ]);
  });
});

describe("shortened", () => {
  it("keeps short text, and says how long cut text is", () => {
    expect(shortened("Lorem", 5)).toBe("Lorem");
    expect(shortened("Lorem ipsum", 5)).toBe(cut({ text: "Lorem", length: 11 }));
  });

  it("does not cut a character in two", () => {
    expect(shortened("ab\u{1F331}cd", 3)).toBe(cut({ text: "ab", length: 6 }));
    expect(shortened("ab\u{1F331}cd", 4)).toBe(cut({ text: "ab\u{1F331}", length: 6 }));
  });

  it("keeps the direction of a text to itself, even if the text opens one and never closes it", () => {
    expect(isolated("a\u202eb")).toBe("\u2068a\u202eb\u2069");
  });
});

describe("a task", () => {
  it("says how it stands", () => {
    const late = (daysLate: number) => statusWords({ ...takeCount, status: "late", daysLate });
    expect([late(1), late(9)]).toEqual([1, 9].map((days) => todayPage.lateBy({ days })));
    expect(statusWords({ ...takeCount, status: "due" })).toBe(todayPage.due());
    expect(statusWords(takeCount)).toBe(todayPage.coming());
  });

  it("keeps none and not counted apart", () => {
    expect([null, 0, 1].map((plants) => plantsWords({ ...takeCount, plants }))).toEqual([
      todayPage.plantsNotCounted(),
      ...[0, 1].map((plants) => todayPage.plants({ plants })),
    ]);
  });

  it.each([
    [null, null],
    [0.04, todayPage.minutes()],
    [1, todayPage.hours({ number: "1", rounded: 1 })],
    [1.26, todayPage.hours({ number: "1.3", rounded: 1.3 })],
    [1234, todayPage.hours({ number: countText(1234), rounded: 1234 })],
  ])("of %s hours says %s", (hours, words) =>
    expect(hoursWords({ ...takeCount, hours })).toBe(words),
  );
});

describe("a group of takes", () => {
  const [amberlow, brindlecap] = takes.rows;
  if (amberlow === undefined || brindlecap === undefined) throw new Error("two groups are needed");

  it("says its range and its counts", () => {
    expect(rangeWords(amberlow)).toBe(
      takesPage.rateAndRange({ rate: 0.784, from: 0.694, to: 0.854 }),
    );
    expect(countWords(amberlow)).toBe(takesPage.counts({ taken: 251, grafted: 320, batches: 2 }));
    expect(rangeWords({ ...amberlow, from: null })).toBe(takesPage.rate({ rate: 0.784 }));
  });

  it("that is not counted has no rate of 0", () => {
    expect(rangeWords(brindlecap)).toBe(takesPage.notCountedYet());
  });
});
