import { describe, expect, it } from "vitest";
import { onlyThisCheck } from "../../src/sentences/made/check";
import { rowsLeftOutOfPage } from "../../src/sentences/made/records";
import { correctTimetable } from "../../src/sentences/made/set-up";
import { takesRemarks } from "../../src/wording/takes";
import { refusalText } from "../support/refusal";
import { type Nursery, openNursery, smallRecords } from "./nursery";

/** A log below the batches, with a line of a step that nobody knows. */
const log = [[], ["Day", "Batch", "Step", "Count"], ["2026-11-10", "B1", "Sweeping", null]];

function comparedTakes(nursery: Nursery) {
  return nursery.ask("sidebarCompareTakes", { by: "", evenFor: "", period: "month" });
}

// A foreman in the sidebar read "1 row left out: see BATCH_CHECK", which is a function in a cell.
describe("rows left out, told in the sidebar", () => {
  it("lead to the section Check", () => {
    const nursery = openNursery([smallRecords(...log)]).ready();
    const leftOut = { code: "rows-left-out", rows: 1 };
    expect(nursery.ask("sidebarToday", { daysAhead: 7 }).remarks).toEqual([leftOut]);
    expect(nursery.ask("sidebarAhead", null).remarks).toEqual([leftOut]);
    const takes = comparedTakes(nursery);
    for (const remarks of [takes.remarks, takes.reasonsRemarks]) {
      expect(remarks).toContainEqual(leftOut);
      expect(takesRemarks(remarks, "page")).toContain(rowsLeftOutOfPage({ rows: 1 }));
    }
  });

  it("are not told of where there are none", () => {
    const nursery = openNursery([smallRecords()]).ready();
    expect(nursery.ask("sidebarToday", { daysAhead: 7 }).remarks).toEqual([]);
    expect(nursery.ask("sidebarAhead", null).remarks).toEqual([]);
  });
});

const SOON = { row: 4, column: "usual", found: "soon", code: "no-number" } as const;

describe("a timetable with several faults", () => {
  const faulty = () => {
    const nursery = openNursery([smallRecords()]).ready();
    for (const cell of ["E4", "E5", "E6"]) {
      nursery.sheet("Nursery timetable").getRange(cell).setValue("soon");
    }
    return nursery;
  };

  it("says where the others are told", () => {
    expect(faulty().refusal("sidebarToday", { daysAhead: 7 })).toBe(
      correctTimetable({
        why: refusalText({ code: "timetable-unusable", fault: SOON, more: 2 }),
        tab: "Nursery timetable",
      }),
    );
  });

  it("has them all in the section Check", () => {
    const { rows } = faulty().ask("sidebarCheck", null);
    const told = rows.filter(({ whatHappens }) => whatHappens === onlyThisCheck());
    expect(told).toHaveLength(3);
    expect(told[0]).toMatchObject({ row: null, column: "", found: "soon" });
  });
});
