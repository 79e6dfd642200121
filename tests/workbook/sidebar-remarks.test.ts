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

/** What is said beside today's list, but for the care that falls on the day. */
function leftOutToday(nursery: Nursery) {
  const { remarks } = nursery.ask("sidebarToday", { daysAhead: 7 });
  return remarks.filter(({ code }) => code !== "care-today");
}

/** What is said beside the months ahead, but for the shares that they count on. */
function leftOutAhead(nursery: Nursery) {
  const { remarks } = nursery.ask("sidebarAhead", null);
  return remarks.filter(({ code }) => code !== "general-shares");
}

// A foreman in the sidebar read "1 row left out: see BATCH_CHECK", which is a function in a cell.
describe("rows left out, told in the sidebar", () => {
  it("lead to the section Check", () => {
    const nursery = openNursery([smallRecords(...log)]).ready();
    const leftOut = { code: "rows-left-out", rows: 1 };
    expect(leftOutToday(nursery)).toEqual([leftOut]);
    expect(leftOutAhead(nursery)).toEqual([leftOut]);
    const takes = comparedTakes(nursery);
    for (const remarks of [takes.remarks, takes.reasonsRemarks]) {
      expect(remarks).toContainEqual(leftOut);
      expect(takesRemarks(remarks, "page")).toContain(rowsLeftOutOfPage({ rows: 1 }));
    }
  });

  it("are not told of where there are none", () => {
    const nursery = openNursery([smallRecords()]).ready();
    expect(leftOutToday(nursery)).toEqual([]);
    expect(leftOutAhead(nursery)).toEqual([]);
  });
});

describe("a timetable of which nothing can be used", () => {
  const faulty = () => {
    const nursery = openNursery([smallRecords()]).ready();
    const steps = nursery.values("Nursery timetable").map(([, step]) => step);
    steps.forEach((step, at) => {
      if (step !== "Ready") return;
      nursery
        .sheet("Nursery timetable")
        .getRange(`C${at + 1}`)
        .setValue("Nowhere");
    });
    return { nursery, row: steps.indexOf("Ready") + 1 };
  };

  it("says where the other faults are told", () => {
    const { nursery, row } = faulty();
    const told = nursery.ask("sidebarCheck", null).rows;
    const faults = told.filter(({ whatHappens }) => whatHappens === onlyThisCheck());
    expect(faults[0]).toMatchObject({ rows: [], column: "", found: "Nowhere" });
    const fault = {
      ...({ row, column: "after", found: "Nowhere", code: "no-such-step" } as const),
      ...({ after: "Nowhere", method: "Cocoa cleft graft", leftOut: "method" } as const),
    };
    const why = refusalText({ code: "timetable-unusable", fault, more: faults.length - 1 });
    expect(nursery.refusal("sidebarToday", { daysAhead: 7 })).toBe(
      correctTimetable({ why, tab: "Nursery timetable" }),
    );
  });
});
