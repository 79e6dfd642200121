import { describe, expect, it } from "vitest";
import type { Cell } from "../../../src/core/cells/cell";
import { atStep, reading, troublesOf } from "./reading";

/** Takes that are read from one row under a header, and what is said of them. */
function takesOf(header: readonly string[], row: readonly Cell[]) {
  const records = reading([header, row]);
  return [atStep(records, 0, "take count").count, troublesOf(records)];
}
const said = "2 Takes: cell-read-as";

describe("a count written as a per cent", () => {
  it("is of the plants counted at the step before", () => {
    expect(takesOf(["Batch", "Grafts made", "Takes"], ["B1", 120, "80 %"])).toEqual([96, [said]]);
    // A cell formatted as a per cent holds its share.
    expect(takesOf(["Batch", "Grafts made", "Takes"], ["B1", 120, 0.8])).toEqual([96, [said]]);
  });

  it.each<[readonly string[], readonly Cell[]]>([
    [
      ["Batch", "Grafts made", "Takes", "Take count day"],
      ["B1", 120, "80 %", "2026-10-01"],
    ],
    [
      ["Batch", "Grafts made", "Take count day", "Takes"],
      ["B1", 120, "2026-10-01", "80 %"],
    ],
    [
      ["Batch", "Takes", "Grafts made"],
      ["B1", "80 %", 120],
    ],
    [
      ["Batch", "Ready plants", "Grafts made", "Takes"],
      ["B1", 50, 120, "80 %"],
    ],
    [
      ["Batch", "Grafts made", "Ready plants", "Takes"],
      ["B1", 120, 50, "80 %"],
    ],
    [
      ["Takes", "Ready on", "Grafts made", "Batch", "Sown", "Seeds sown"],
      ["80 %", "2026-10-01", 120, "B1", "2026-01-05", 300],
    ],
  ])("is of the step before whatever the order of the columns: %j", (header, row) => {
    expect(takesOf(header, row)).toEqual([96, [said]]);
  });

  it("is of the last step that was counted, where the one before was not", () => {
    const header = ["Batch", "Seeds sown", "Grafts made", "Takes"];
    expect(takesOf(header, ["B1", 200, "", "50 %"])).toEqual([100, [said]]);
  });

  it("is left out and listed where nothing was counted before", () => {
    expect(
      takesOf(["Batch", "Place", "Grafted on", "Takes"], ["B1", "Bay 1", "2026-09-03", "80 %"]),
    ).toEqual([null, ["2 Takes: percent-of-nothing"]]);
  });
});
