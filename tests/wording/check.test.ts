import { describe, expect, it } from "vitest";
import { CHECK_COLUMNS, type CheckedRecords, type Trouble } from "../../src/core";
import * as text from "../../src/sentences/made/check";
import * as headers from "../../src/sentences/made/check-columns";
import * as trouble from "../../src/sentences/made/troubles";
import * as unread from "../../src/sentences/made/unread";
import { capital } from "../../src/wording/capital";
import { checkTable, entryWords } from "../../src/wording/check";
import { dayWords } from "../../src/wording/days";
import { faultPlace, timetableFault } from "../../src/wording/timetable";
import { troubleWords } from "../../src/wording/trouble-words";
import { unreadWords } from "../../src/wording/unread";
import { day } from "../support/days";
import { daysThatFall } from "../support/timetable-faults";

const NO_ROWS = { used: 0, leftOut: 0, notBatches: 0, heading: 0, blank: 0 };
const AT = { row: 2, column: "Sown", found: "soon" };

function rowsOf(troubles: readonly Trouble[], rows: CheckedRecords["rows"] = NO_ROWS) {
  return checkTable({ entries: troubles.map((one) => ({ troubles: [one], plants: 0 })), rows })
    .rows;
}

describe("checkTable", () => {
  it("keeps its columns, says so where nothing is amiss, and counts the rows of the range", () => {
    const rows = { used: 1, leftOut: 2, notBatches: 3, heading: 4, blank: 5 };
    const { columns } = checkTable({ entries: [], rows });
    expect(columns.map(({ kind }) => kind)).toEqual(Object.values(CHECK_COLUMNS));
    expect(columns.map(({ name }) => name)).toEqual([
      headers.row(),
      headers.column(),
      headers.found(),
      headers.trouble(),
      headers.whatHappens(),
      headers.whatToDo(),
      headers.rows(),
    ]);
    expect(rowsOf([], rows)).toEqual([
      [null, null, null, text.noTrouble(), text.rowsAllUsed(), text.nothingToDo(), null],
      [null, null, null, text.rows({ rows: 15 }), text.rowsUsed(rows), null, null],
    ]);
  });

  it("has a row a trouble: where, what, what happens, what to do", () => {
    expect(rowsOf([{ ...AT, code: "cell-unread", why: { code: "not-a-day" } }])[0]).toEqual([
      2,
      "Sown",
      "soon",
      capital(unread.notADay()),
      trouble.cellUnreadHappens(),
      trouble.cellUnreadToDo(),
      null,
    ]);
  });

  it("names the cell of a timetable in the column, and counts the cells that are filled", () => {
    const fault = daysThatFall;
    const [first] = rowsOf([{ ...AT, row: null, code: "timetable", fault }]);
    expect(first?.slice(0, 2)).toEqual([null, faultPlace(fault)]);
    expect(first?.[3]).toBe(capital(timetableFault(fault)));
    const filled = troubleWords({ ...AT, found: "", code: "filled-from-above", blanks: 3 });
    expect(filled.found).toBe(trouble.blankCells({ blanks: 3 }));
  });
});

describe("entryWords", () => {
  const sooner = (row: number, found: string, days: number): Trouble => ({
    ...{ row, column: "Release", found, code: "too-soon", step: "Grafting", days, fewest: 12 },
  });

  // "Mends all 12" took it for granted that every "Kiwi" is the same.
  it("says that one answer counts for all rows, and what to do where one differs", () => {
    const troubles = [4, 6].map(
      (row): Trouble => ({
        row,
        column: "Method",
        found: "Kiwi",
        code: "no-such-method",
        near: null,
      }),
    );
    expect(entryWords({ troubles, plants: 0 }).whatToDo).toBe(
      trouble.methodRowsToDo({ toDo: trouble.noSuchMethodToDo(), rows: 2 }),
    );
  });

  it("quotes the first three where the words differ", () => {
    const risen = (row: number, before: number): Trouble => ({
      ...{ row, column: "Takes", found: `${row}0`, code: "count-rises", before, step: "Grafting" },
    });
    const troubles = [4, 5, 6, 9].map((row) => risen(row, row));
    const words = entryWords({ troubles, plants: 0 });
    expect(words.found).toBe("40, 50, 60, …");
    expect(words.whatHappens).toBe(trouble.bothCounts());
    expect(words.whatToDo).toBe(trouble.checkCounts());
    const said = (row: number, before: number) =>
      trouble.inRow({ row, said: trouble.countRises({ before, step: "Grafting" }) });
    expect(words.trouble).toBe([said(4, 4), said(5, 5), said(6, 6), "…"].join(". "));
    const [row] = checkTable({ entries: [{ troubles, plants: 0 }], rows: NO_ROWS }).rows;
    expect([row?.[0], row?.[6]]).toEqual([4, "4-6, 9"]);
  });

  it("says of days that come too soon between how many, and the one change that mends them", () => {
    const soon = (...days: number[]) =>
      entryWords({ troubles: days.map((one, at) => sooner(at + 4, "", one)), plants: 0 });
    expect(soon(5, 3, 4)).toMatchObject({
      trouble: trouble.tooSoonRows({ least: 3, most: 5, step: "Grafting", fewest: 12 }),
      whatToDo: trouble.tooSoonRowsToDo({ least: 3, rows: 3 }),
    });
    expect(soon(3, 3)).toMatchObject({
      trouble: trouble.tooSoon({ days: 3, step: "Grafting", fewest: 12 }),
      whatToDo: trouble.tooSoonRowsToDo({ least: 3, rows: 2 }),
    });
    expect(soon(3).whatToDo).toBe(trouble.checkDays());
    // More than a function takes as arguments.
    const troubles = Array.from({ length: 130_000 }, (_, row) => sooner(row, "", row % 7));
    expect(entryWords({ troubles, plants: 0 }).whatToDo).toBe(
      trouble.tooSoonRowsToDo({ least: 0, rows: 130_000 }),
    );
  });

  it("says of days before their step in how many rows, and what would mend them all", () => {
    const early = (row: number): Trouble => ({
      ...{ row, column: "Release", found: "2026-08-01", code: "before-step", step: "Grafting" },
      stepDay: day("2026-08-09"),
    });
    expect(entryWords({ troubles: [early(4), early(7)], plants: 0 })).toMatchObject({
      trouble: trouble.beforeStepRows({ step: "Grafting", rows: 2 }),
      whatToDo: trouble.beforeStepRowsToDo({ rows: 2 }),
    });
    expect(entryWords({ troubles: [early(4)], plants: 0 }).whatToDo).toBe(trouble.checkDays());
  });

  it("says of swapped days what each was read as, and how all are mended", () => {
    const swapped = (row: number): Trouble => ({
      ...{ row, column: "Release", found: "2026-04-03", code: "day-swapped", against: "Grafting" },
      ...{ day: day("2026-04-03"), fits: day("2026-03-04"), againstDay: day("2026-03-01") },
    });
    const [one, two] = [[swapped(4)], [swapped(4), swapped(7)]].map((troubles) =>
      entryWords({ troubles, plants: 0 }),
    );
    expect(one?.whatToDo).toBe(trouble.daySwappedToDo({ fits: dayWords(day("2026-03-04")) }));
    expect(two?.whatToDo).toBe(trouble.daySwappedRowsToDo({ rows: 2 }));
  });
});

describe("troubleWords", () => {
  it("names some of the batches of a lot and says that there are more", () => {
    const batches = ["B1", "B2", "B3", "B4", "B5", "B6", "B7"];
    const overdrawn = { ...AT, code: "lot-overdrawn", taken: 9, there: 4, batches } as const;
    expect(troubleWords(overdrawn).trouble).toBe(
      trouble.lotOverdrawnBy({ taken: 9, there: 4, batches: "B1, B2, B3, B4, B5, B6, …" }),
    );
    expect(troubleWords({ ...overdrawn, batches: [] }).trouble).toBe(
      trouble.lotOverdrawn({ taken: 9, there: 4 }),
    );
  });

  it("says how a cell was read", () => {
    const happens = (readAs: Extract<Trouble, { code: "cell-read-as" }>["readAs"]) =>
      troubleWords({ ...AT, code: "cell-read-as", readAs }).whatHappens;
    expect(happens({ code: "count", count: 1200 })).toBe(trouble.readAs({ readAs: 1200 }));
    expect(happens({ code: "many", count: 1e6 })).toBe(trouble.readAsPlants({ count: 1e6 }));
    expect(happens({ code: "share", count: 96, percent: 80, outOf: 120 })).toBe(
      trouble.readAsShare({ count: 96, percent: 80, outOf: 120 }),
    );
    const sown = day("2026-09-03");
    expect(happens({ code: "day", day: sown })).toBe(trouble.readAs({ readAs: dayWords(sown) }));
  });

  it("names both days of a date that could be two", () => {
    const [one, other] = [day("2026-09-03"), day("2026-03-09")];
    expect(unreadWords({ code: "either-day", days: [one, other] })).toBe(
      unread.eitherDay({ one: dayWords(one), other: dayWords(other) }),
    );
  });
});
