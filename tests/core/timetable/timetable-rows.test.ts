import { describe, expect, it } from "vitest";
import { gridOf } from "../../../src/core/cells/cell";
import { builtInTimetable, readTimetable } from "../../../src/core/timetable/read-timetable";
import type { Timetable } from "../../../src/core/timetable/timetable";
import { timetableRows } from "../../../src/core/timetable/timetable-rows";
import { timetableTable } from "../../../src/wording/timetable";
import { faultOf } from "../../support/fault-of";
import { SMALL, timetableOf } from "./typed-timetable";

/** A timetable put into cells and read again. */
function readBack(timetable: Timetable) {
  const answer = timetableTable(timetableRows(timetable, null));
  const header = answer.columns.map(({ name }) => name);
  return readTimetable(
    gridOf([header, ...answer.rows.map((row) => row.map((cell) => cell ?? ""))]),
  );
}

describe("timetableRows", () => {
  it("is read back identically, the built-in method and a nursery's own", () => {
    for (const timetable of [builtInTimetable(), timetableOf(SMALL).timetable]) {
      expect(readBack(timetable)).toEqual({ timetable, faults: [] });
    }
  });

  it("is read back identically with kept shares that no decimal holds exactly", () => {
    const { timetable } = timetableOf(
      "Step|After|Usual day|Counted|Kept of 100\nSowing|||yes|\nA|Sowing|1|yes|33.3333\nB|A|1|yes|0.07",
    );
    const again = readBack(timetable).timetable;
    expect(again).toEqual(timetable);
  });

  it("leaves the first step's days and what is not known empty, never 0", () => {
    const [first] = timetableRows(timetableOf(SMALL).timetable, null);
    expect(first).toEqual({
      method: "Plum budding",
      step: "Sowing",
      after: null,
      from: null,
      usual: null,
      by: null,
      counted: "yes",
      kept: null,
      perPersonHour: 200,
      needs: "bag 1; potting mix 1.4 l",
      caution: "Wash hands after handling treated seed; read the label.",
      source: "made up",
      kind: "job",
      every: null,
      until: null,
    });
  });

  it("gives one method by its name, or says which are known", () => {
    const { timetable } = timetableOf(`${SMALL}\nPear | Sowing`);
    expect(timetableRows(timetable, "pear").map(({ method }) => method)).toEqual(["Pear"]);
    expect(faultOf(() => timetableRows(timetable, "Kiwi"))).toEqual({
      code: "unknown-method",
      name: "Kiwi",
      known: ["Plum budding", "Pear"],
    });
  });
});
