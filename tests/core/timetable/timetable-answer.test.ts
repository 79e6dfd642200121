import { describe, expect, it } from "vitest";
import { gridOf } from "../../../src/core/cells/cell";
import { builtInTimetable, readTimetable } from "../../../src/core/timetable/read-timetable";
import { timetableAnswer } from "../../../src/core/timetable/timetable-answer";
import { SMALL, timetableOf } from "./timetable-rows";

/** An answer put into cells and read again. */
function readBack(answer: ReturnType<typeof timetableAnswer>) {
  const header = answer.columns.map(({ name }) => name);
  return readTimetable(
    gridOf([header, ...answer.rows.map((row) => row.map((cell) => cell ?? ""))]),
  );
}

describe("timetableAnswer", () => {
  it("is read back identically, the built-in method and a nursery's own", () => {
    for (const timetable of [builtInTimetable(), timetableOf(SMALL).timetable]) {
      expect(readBack(timetableAnswer(timetable, null))).toEqual({ timetable, faults: [] });
    }
  });

  it("is read back identically with kept shares that no decimal holds exactly", () => {
    const { timetable } = timetableOf(
      "Step|After|Usual day|Counted|Kept of 100\nSowing|||yes|\nA|Sowing|1|yes|33.3333\nB|A|1|yes|0.07",
    );
    const again = readBack(timetableAnswer(timetable, null)).timetable;
    expect(again).toEqual(timetable);
  });

  it("leaves the first step's days and what is not known empty, never 0", () => {
    const [first] = timetableAnswer(timetableOf(SMALL).timetable, null).rows;
    expect(first).toEqual([
      ...["Plum budding", "Sowing", null, null, null, null, "yes", null, 200],
      ...["bag 1; potting mix 1.4 l", null, "made up"],
    ]);
  });

  it("gives one method by its name, or says which are known", () => {
    const { timetable } = timetableOf(`${SMALL}\nPear | Sowing`);
    expect(timetableAnswer(timetable, "pear").rows.map((row) => row[0])).toEqual(["Pear"]);
    expect(() => timetableAnswer(timetable, "Kiwi")).toThrow(
      'method "Kiwi" is not known; known are: Plum budding, Pear',
    );
  });
});
