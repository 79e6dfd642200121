import { describe, expect, it } from "vitest";
import { gridOf } from "../../../src/core/cells/cell";
import { daysLater } from "../../../src/core/dates/civil-day";
import { builtInTimetable } from "../../../src/core/timetable/read-timetable";
import { canDo, hundredthsOn, jobKind } from "../../../src/core/work/crew";
import { crewRemarks, readCrew } from "../../../src/core/work/read-crew";
import { day } from "../../support/days";
import { sheetValues } from "../../support/sheet-values";

const TIMETABLE = builtInTimetable();
const stepKeys = new Set(TIMETABLE.methods.flatMap(({ steps }) => steps.map(({ key }) => key)));
const HABITS = {
  ...({
    asOf: day("2026-11-25"),
    localeOrder: "day-first",
    stepKeys,
    timetable: TIMETABLE,
  } as const),
};
const crewOf = (text: string) => readCrew(gridOf(sheetValues(text)), HABITS);

/** Hours from Monday 30 November 2026 on, for two weeks: worked by hand from the tables below. */
const fortnight = (reading: ReturnType<typeof crewOf>, name: string) => {
  const person = reading.crew.find((one) => one.name === name);
  const monday = day("2026-11-30");
  return person === undefined
    ? null
    : Array.from({ length: 14 }, (_, at) => hundredthsOn(person, daysLater(monday, at)) / 100).join(
        " ",
      );
};

/** Tables as other people keep them (invented, from memory, no source). */
describe("a crew as a stranger keeps it", () => {
  it("with weekdays, several stretches off and half days", () => {
    const crew = crewOf(`
      Worker | Does                       | Hours | Days            | Leave                        | Phone
      Akosua | Grafting (cocoa)           | 7     | Mon-Fri         | 1/12-2/12; 10/12 (half day)  | 024
      Kojo   | all but rubber budding     | 8     | Mon–Fri, Sat half |                            | 025
      Efua   | Sowing and grafting        | 6     | Tue & Thu       | 3/12 am                      |
      Yaw    |                            | 8     | not Sunday      | 7 Dec to 9 Dec               | 026`);
    expect(fortnight(crew, "Akosua")).toBe("7 0 0 7 7 0 0 7 7 7 3.5 7 0 0");
    expect(fortnight(crew, "Kojo")).toBe("8 8 8 8 8 4 0 8 8 8 8 8 4 0");
    expect(fortnight(crew, "Efua")).toBe("0 6 0 3 0 0 0 0 6 0 6 0 0 0");
    expect(fortnight(crew, "Yaw")).toBe("8 8 8 8 8 8 0 0 0 0 8 8 8 0");
    expect(crewRemarks(crew)).toEqual([
      { code: "columns-unread", table: "crew", columns: [{ header: "Phone", field: null }] },
    ]);
    const may = (name: string, step: string, method: string) =>
      crew.crew.some((one) => one.name === name && canDo(one, jobKind(step, method)));
    expect(may("Akosua", "grafting", "Cocoa cleft graft")).toBe(true);
    expect(may("Akosua", "grafting", "Mango cleft graft")).toBe(false);
    expect(may("Kojo", "grafting", "Rubber green bud")).toBe(false);
    expect(may("Kojo", "ready", "Rubber green bud")).toBe(true);
  });

  // "Methods" and "Crops" were columns that are not read, and whoever grafts cocoa alone was sent to mangoes.
  it.each(["Methods", "Crops", "Can graft", "Injerta", "Culturas"])(
    "with a column %s that says who may graft what",
    (header) => {
      const crew = crewOf(`
        Worker | Tasks              | ${header}        | Hours
        Ana    | Grafting, Sowing   | mango            | 8
        Bo     |                    | cocoa and mango  | 8
        Cy     | Grafting           | not rubber       | 8
        Di     | Grafting           |                  | 8
        Ed     | Grafting           | mango, quince    | 8
        Flo    |                    | quince           | 8
        Gil    |                    | all              | 8`);
      const may = (name: string, step: string, method: string) =>
        crew.crew.some((one) => one.name === name && canDo(one, jobKind(step, method)));
      const grafts = (name: string) =>
        ["Mango cleft graft", "Cocoa cleft graft", "Rubber green bud"].map((method) =>
          may(name, "grafting", method),
        );
      expect(["Ana", "Bo", "Cy", "Di", "Ed", "Flo", "Gil"].map(grafts)).toEqual([
        [true, false, false],
        [true, true, false],
        [true, true, false],
        [true, true, true],
        [true, false, false],
        [false, false, false],
        [true, true, true],
      ]);
      // What anybody can do is asked of no method.
      expect(may("Ana", "sowing", "Rubber green bud")).toBe(true);
      expect(may("Bo", "take count", "Rubber green bud")).toBe(true);
      expect(may("Cy", "sowing", "Mango cleft graft")).toBe(false);
      expect(crewRemarks(crew)).toEqual(
        [6, 7].map((row) => ({
          ...({ code: "row-noted", table: "crew", row } as const),
          what: { code: "no-such-step", found: "quince" },
        })),
      );
    },
  );

  it("with more columns of days off", () => {
    const crew = crewOf(`
      Name | Hours per day | Off from | Off to | Off from 2 | Off to 2 | Days off
      Ana  | 8             | 1/12/26  | 2/12/26| 8/12/26    | 9/12/26  | Sundays
      Bo   | 8             | 1/12/26  | 2/12/26| 10/12/26   |          | Sat & Sun
      Cy   | 8             |          |        |            |          | 4/12, 11/12`);
    expect(crewRemarks(crew)).toEqual([]);
    expect(fortnight(crew, "Ana")).toBe("8 0 0 8 8 8 0 8 0 0 8 8 8 0");
    // A first day alone has no end.
    expect(fortnight(crew, "Bo")).toBe("8 0 0 8 8 0 0 8 8 8 0 0 0 0");
    expect(fortnight(crew, "Cy")).toBe("8 8 8 8 0 8 8 8 8 8 8 0 8 8");
  });

  it("with a row for each kind of day", () => {
    const crew = crewOf(`
      Nom | Tâches | Heures | Jours            | Congés
      Ana | tout   | 8      | lundi au jeudi   |
      Ana | tout   | 5      | vendredi         |
      Bo  | tout   | 7      |                  | du 1er au 3 décembre
      Bo  |        |        | sauf le mercredi |`);
    expect(crewRemarks(crew)).toEqual([]);
    expect(fortnight(crew, "Ana")).toBe("8 8 8 8 5 0 0 8 8 8 8 5 0 0");
    expect(fortnight(crew, "Bo")).toBe("7 0 0 0 7 7 7 7 7 0 7 7 7 7");
  });

  it("names what it can't read, and plans with nobody whose days it does not know", () => {
    const crew = crewOf(`
      Name | Hours | Days               | Tasks         | Shirt
      Ana  | 8     | every other Friday |               | L
      Bo   | 8     | Mon–Fri            | grafting, tea |
      Cy   | 8     |                    |               |`);
    expect(crew.crew.map(({ name }) => name)).toEqual(["Bo", "Cy"]);
    const row = (at: number, what: object) => ({ code: "row-noted", table: "crew", row: at, what });
    expect(crewRemarks(crew)).toEqual([
      {
        ...{ code: "row-left-out", table: "crew", row: 2 },
        why: { code: "not-weekdays", found: "every other Friday" },
      },
      row(3, { code: "no-such-step", found: "tea" }),
      { code: "columns-unread", table: "crew", columns: [{ header: "Shirt", field: null }] },
    ]);
  });
});

// It was read as the days off themselves.
it("days under a header that says leave and a word more may be its first or its last", () => {
  const crew = crewOf(`
    Person | Tasks    | Hours a day | Leave zorv
    Ana    | Grafting | 6           | 2026-12-01
    Bo     | Grafting | 6           | 2026-12-03
    Cy     | Grafting | 6           | 2026-12-04`);
  expect(crew.crew.map(({ off }) => off)).toEqual([[], [], []]);
  expect(crewRemarks(crew).length).toBeGreaterThan(0);
});
