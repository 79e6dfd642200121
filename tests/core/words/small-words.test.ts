import { describe, expect, it } from "vitest";
import { measureOf } from "../../../src/core/amounts";
import { gridOf } from "../../../src/core/cells/cell";
import { readCount } from "../../../src/core/cells/read-count";
import { readDayText } from "../../../src/core/cells/read-day-text";
import { readPrices } from "../../../src/core/costs/read-prices";
import { readMonths } from "../../../src/core/orders/harvest-months";
import { writtenVarieties } from "../../../src/core/orders/wishes";
import { readTimetable } from "../../../src/core/timetable/read-timetable";
import { allLanguages, everyWord } from "../../../src/core/words/all-languages";
import { readClosedDays } from "../../../src/core/work/read-closed-days";
import { readCrew } from "../../../src/core/work/read-crew";
import { day } from "../../support/days";
import { sheetValues } from "../../support/sheet-values";

const HABITS = { asOf: day("2026-11-25"), localeOrder: "day-first" } as const;
const stepKeys = new Set(["sowing", "grafting"]);
const crewOf = (tasks: string, hours: string) =>
  readCrew(
    gridOf([
      ["Person", "Tasks", "Hours a day"],
      ["Ana", tasks, hours],
    ]),
    { ...HABITS, stepKeys },
  );

// Small words stood in patterns in English alone, so that "8 heures" was no number of hours.
describe.each(allLanguages)("small words in $language", (words) => {
  const first = (list: readonly string[]) => list[0] ?? "";

  it("join two steps, and two months", () => {
    const { crew, troubles } = crewOf(`Sowing ${first(words.and)} Grafting`, "6");
    expect(troubles).toEqual([]);
    expect(crew[0]?.skills).toEqual(stepKeys);
    expect(readMonths(`May ${first(words.and)} Aug`)).toEqual(new Set([5, 8]));
    expect(readMonths(`May ${first(words.upTo)} Jul`)).toEqual(new Set([5, 6, 7]));
  });

  it("stand between varieties of which any will do", () => {
    const variety = `Amberlow ${first(words.either)} Corvane`;
    expect(writtenVarieties({ variety }, new Map())).toEqual(["Amberlow", "Corvane"]);
  });

  it("stand behind hours, and mean every task", () => {
    const { crew, troubles } = crewOf(first(words.everything), `6 ${first(words.units.hour)}`);
    expect(troubles).toEqual([]);
    expect(crew).toEqual([{ name: "Ana", skills: null, hundredthsADay: 600, off: [] }]);
  });

  it("stand in counts", () => {
    const read = (text: string) => readCount(text, { decimalMark: null, outOf: 200 });
    const trays = `20 ${first(words.trays)} ${first(words.of)} 54`;
    expect(read(trays)).toMatchObject({ count: 1080 });
    expect(read(`80 ${first(words.percent)}`)).toMatchObject({ count: 160 });
  });

  it("name the work and a unit of a price", () => {
    const { hour, ofItem, troubles } = readPrices(
      gridOf([
        ["Item", "Price", "Per"],
        [first(words.work), 3, first(words.units.hour)],
        ["Twine", 5, `${first(words.per)} 10 ${first(words.units.metre)}`],
      ]),
      null,
    );
    expect(troubles).toEqual([]);
    expect(hour).toBe(3);
    expect(ofItem.get("twine")).toMatchObject([{ kind: "length", each: 0.0005 }]);
  });

  it("name each weekday on which all is closed", () => {
    for (const names of words.weekdayNames) {
      const rows = names.map((name) => ["Closed on", name]);
      for (const row of rows) {
        const { closed, troubles } = readClosedDays(
          gridOf([["Closed on"], [row[1] ?? ""]]),
          HABITS,
        );
        expect([row, troubles]).toEqual([row, []]);
        expect([row, ...closed.weekdays]).toEqual([row, words.weekdayNames.indexOf(names) + 1]);
      }
    }
  });
});

describe("units", () => {
  it("are alike by any of their names", () => {
    expect(everyWord(({ units }) => units.kilogram).map(measureOf)).toEqual(
      everyWord(({ units }) => units.kilogram).map(() => measureOf("kg")),
    );
    expect(everyWord(({ dozen }) => dozen).map((word) => measureOf(word).size)).toEqual(
      everyWord(({ dozen }) => dozen).map(() => 12),
    );
  });
});

// A weekday's name of two words was no weekday before a date.
it("reads a date behind a weekday's name of two words", () => {
  const read = readDayText("Jum'at 27 November 2026");
  expect(read).toEqual({ kind: "day", day: day("2026-11-27"), isPlain: true });
});

it("reads a timetable with French headers", () => {
  const { timetable, faults } = readTimetable(
    gridOf(
      sheetValues(`
        Méthode | Étape  | Après | Au plus tôt | Jour habituel | Au plus tard | Compté
        Prunier | Semis  |       | 0           | 0             | 0            | oui
                | Greffe | Semis | 80          | 90            | 100          | oui`),
    ),
  );
  expect(faults).toEqual([]);
  expect(
    timetable.methods[0]?.steps.map(({ key, usual, counted }) => [key, usual, counted]),
  ).toEqual([
    ["sowing", 0, true],
    ["grafting", 90, true],
  ]);
});
