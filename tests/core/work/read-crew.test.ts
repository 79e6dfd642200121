import { describe, expect, it } from "vitest";
import { gridOf } from "../../../src/core/cells/cell";
import type { RowFault } from "../../../src/core/tables/row-trouble";
import { stepKey } from "../../../src/core/words/step-key";
import { isClosed } from "../../../src/core/work/crew";
import { readClosedDays } from "../../../src/core/work/read-closed-days";
import { crewRemarks, readCrew } from "../../../src/core/work/read-crew";
import { day } from "../../support/days";
import { faultOf } from "../../support/fault-of";
import { sheetValues } from "../../support/sheet-values";

const HABITS = { asOf: day("2026-11-25"), localeOrder: "day-first" } as const;
const crewOf = (text: string) =>
  readCrew(gridOf(sheetValues(text)), { ...HABITS, stepKeys: new Set(["grafting", "take count"]) });
const closedOf = (text: string) => readClosedDays(gridOf(sheetValues(text)), HABITS);

describe("readCrew", () => {
  it("finds its columns below a title, in any order and by other names", () => {
    const { crew, troubles } = crewOf(`
      Who works | | | |
      Hours per day | Away to | Name | Away from | Skills
      7,5           | 3/12/26 | Ana  | 1/12/26   | Budding; take count
      6 h           |         | Bo   |           | all`);
    expect(troubles).toEqual([]);
    expect(crew).toEqual([
      {
        ...{ name: "Ana", skills: new Set(["grafting", "take count"]), hundredthsADay: 750 },
        off: [{ from: day("2026-12-01"), to: day("2026-12-03") }],
      },
      { name: "Bo", skills: null, hundredthsADay: 600, off: [] },
    ]);
  });

  it.each(["Grafting\ntake count", "grafting / Take count", "Grafting and take count"])(
    "reads the tasks in %j",
    (tasks) => {
      const grid = gridOf([
        ["Person", "Tasks", "Hours a day"],
        ["Ana", tasks, 6],
      ]);
      const stepKeys = new Set(["grafting", "take count"]);
      const { crew, troubles } = readCrew(grid, { ...HABITS, stepKeys });
      expect(troubles).toEqual([]);
      expect(crew[0]?.skills).toEqual(stepKeys);
    },
  );

  it("does not take the name of a step apart", () => {
    const grid = gridOf([
      ["Person", "Tasks", "Hours a day"],
      ["Ana", "Stake and tie, Grafting", 6],
    ]);
    const stepKeys = new Set([stepKey("Stake and tie"), "grafting"]);
    const { crew, troubles } = readCrew(grid, { ...HABITS, stepKeys });
    expect(troubles).toEqual([]);
    expect(crew[0]?.skills).toEqual(stepKeys);
  });

  it.each([
    ["Nom", "Tâches", "Heures par jour", "Absent du", "Absent au", "toutes"],
    ["Nombre", "Tareas", "Horas por día", "Ausente desde", "Ausente hasta", "todas"],
    ["Nome", "Tarefas", "Horas por dia", "Ausente de", "Ausente até", "todas"],
    ["Nama", "Tugas", "Jam per hari", "Cuti dari", "Cuti sampai", "semua"],
  ])("reads the headers %s, %s, %s, %s and %s", (...words) => {
    const all = words.pop();
    const { crew, troubles } = readCrew(
      gridOf([words, ["Ana", all ?? "", 6, "2026-12-01", "2026-12-02"]]),
      { ...HABITS, stepKeys: new Set(["grafting"]) },
    );
    expect(troubles).toEqual([]);
    expect(crew).toEqual([
      {
        ...{ name: "Ana", skills: null, hundredthsADay: 600 },
        off: [{ from: day("2026-12-01"), to: day("2026-12-02") }],
      },
    ]);
  });

  it.each([
    "Personne | Tâches        | Heures par jour | Absent du  | Absent au",
    "Persona  | Tareas        | Horas al día    | Libre desde| Libre hasta",
    "Pessoa   | Tarefas       | Horas por dia   | Folga de   | Folga até",
    "Nama     | Tugas         | Jam per hari    | Cuti dari  | Cuti sampai",
  ])("reads the header %s", (header) => {
    const { crew } = crewOf(`
      ${header}
      Ana | Greffage | 6 | 2026-12-01 | 2026-12-03
      Bo  | tout     | 7 |            |`);
    expect(crew).toEqual([
      {
        ...{ name: "Ana", skills: new Set(["grafting"]), hundredthsADay: 600 },
        off: [{ from: day("2026-12-01"), to: day("2026-12-03") }],
      },
      { name: "Bo", skills: null, hundredthsADay: 700, off: [] },
    ]);
  });

  it("puts rows of one name together, the fewest hours and every time off", () => {
    const { crew } = crewOf(`
      Person | Hours a day | Off from   | Off to
      Ana    | 8           | 2026-12-01 | 2026-12-02
      ana    | 6           |            |
      Ana    |             | 2026-12-20 |`);
    expect(crew).toHaveLength(1);
    expect(crew[0]?.hundredthsADay).toBe(600);
    expect(crew[0]?.off).toEqual([
      { from: day("2026-12-01"), to: day("2026-12-02") },
      { from: day("2026-12-20"), to: null },
    ]);
  });

  it("leaves out and says what can't be read", () => {
    const reading = crewOf(`
      Person | Tasks     | Hours a day | Off from   | Off to
      Ana    |           | many        |            |
      Bo     |           | 25          |            |
      Cy     |           | 6           | 2026-12-09 | 2026-12-01
      Di     |           | 6           | sometime   |
             |           | 6           |            |
      Ed     |           |             |            |
      Flo    | juggling  | 6           |            |`);
    expect(reading.crew.map(({ name }) => name)).toEqual(["Flo"]);
    expect(reading.withoutHours).toEqual(["Ed"]);
    const leftOut = (row: number, why: RowFault) => ({
      ...{ code: "row-left-out", table: "crew", row, why },
    });
    expect(crewRemarks(reading)).toEqual([
      leftOut(2, { code: "not-hours", found: "many" }),
      leftOut(3, { code: "more-hours-than-a-day", found: "25" }),
      leftOut(4, { code: "ends-before-it-begins" }),
      leftOut(5, { code: "not-a-day", found: "sometime" }),
      leftOut(6, { code: "nobody-named" }),
      {
        ...{ code: "row-noted", table: "crew", row: 8 },
        what: { code: "no-such-step", found: "juggling" },
      },
      { code: "no-hours-a-day", name: "Ed" },
    ]);
  });

  it("refuses a table without the header, and cells that are not ready", () => {
    expect(faultOf(() => crewOf("Ana | 6"))).toEqual({
      ...{ code: "no-header-row", argument: "crew", columns: ["Person", "Hours a day"] },
    });
    const notReady = { code: "row-not-ready", argument: "crew", row: 2 };
    expect(faultOf(() => crewOf("Person | Hours a day\nAna | #REF!"))).toEqual({
      ...{ ...notReady, shown: "#REF!" },
    });
    expect(faultOf(() => crewOf("Person | Hours a day\nAna | Loading..."))).toEqual({
      ...{ ...notReady, shown: null },
    });
  });
});

describe("readClosedDays", () => {
  it.each([
    ["Jour", "Au"],
    ["Fecha", "Hasta"],
    ["Data", "Até"],
    ["Tanggal", "Sampai"],
  ])("reads the headers %s and %s", (from, to) => {
    const { closed, troubles } = closedOf(`${from} | ${to}\n2026-12-24 | 2026-12-26`);
    expect(troubles).toEqual([]);
    expect(closed.stretches).toEqual([{ from: day("2026-12-24"), to: day("2026-12-26") }]);
  });

  it.each(["Jour | Jusqu'au", "Día | Hasta", "Data | Até", "Hari | Sampai"])(
    "reads the header %s",
    (header) => {
      const { closed } = closedOf(`${header}\nDimanche |\n2026-12-24 | 2026-12-26`);
      const shut = (iso: string) => isClosed(closed, day(iso));
      expect(["2026-11-28", "2026-11-29", "2026-12-25"].map(shut)).toEqual([false, true, true]);
    },
  );

  it("takes days, stretches and weekdays", () => {
    const { closed, troubles } = closedOf(`
      Until      | Day
                 | Sundays
                 | 2026-12-25
      2027-01-02 | 2026-12-31
                 | sabtu
                 | never
      2026-12-01 | Monday`);
    const shut = (iso: string) => isClosed(closed, day(iso));
    // 29 November 2026 is a Sunday.
    expect(["2026-11-28", "2026-11-29", "2026-11-30"].map(shut)).toEqual([true, true, false]);
    expect(["2026-12-25", "2026-12-24"].map(shut)).toEqual([true, false]);
    expect(["2026-12-31", "2027-01-01", "2027-01-04"].map(shut)).toEqual([true, true, false]);
    const leftOut = { code: "row-left-out", table: "closed-days" };
    expect(troubles).toEqual([
      { ...leftOut, row: 6, why: { code: "not-a-day", found: "never" } },
      { ...leftOut, row: 7, why: { code: "weekday-with-last-day" } },
    ]);
  });
});
