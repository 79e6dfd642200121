import { describe, expect, it } from "vitest";
import { noDayYet } from "../../src/sentences/made/batches";
import { askRows, askTable } from "../support/ask";

const AS_OF = "2026-11-25";
const HEADER = ["Batch", "Variety", "Sown", "Seeds sown", "Germinated", "Grafts made", "Takes"];
const GOOD = ["B2", "Alba", "2026-09-03", 200, 160, "", ""];

describe("a count with too many noughts", () => {
  const wrong = ["B1", "Alba", "2026-09-01", 1e12, 0, "", ""];

  it.each(["BATCH_STAGES", "BATCH_STEPS", "BATCH_DUE", "BATCH_READY"])(
    "stops %s for no other batch",
    (name) => {
      const rows = askRows(name, [[HEADER, wrong, GOOD], "", AS_OF]);
      expect(rows.some((row) => row.includes("B2")) || name === "BATCH_READY").toBe(true);
    },
  );

  it("is named by BATCH_CHECK", () => {
    const [, trouble] = askRows("BATCH_CHECK", [[HEADER, wrong, GOOD], "", AS_OF]);
    expect(trouble?.slice(0, 3)).toEqual([2, "Seeds sown", "1000000000000"]);
  });
});

describe("cells that can't be read, and nothing else in the row,", () => {
  it.each<[string, unknown[], [string, string][]]>([
    ["a day", ["B1", "Alba", "soon", "", "", "", ""], [["Sown", "soon"]]],
    ["a count", ["B1", "Alba", "", -5, "", "", ""], [["Seeds sown", "-5"]]],
    [
      "both",
      ["B1", "Alba", "31/4/2026", "many", "", "", ""],
      [
        ["Sown", "31/4/2026"],
        ["Seeds sown", "many"],
      ],
    ],
  ])("are listed one by one, and the batch stays: %s", (_, row, cells) => {
    const range = [HEADER, GOOD, row];
    const troubles = askRows("BATCH_CHECK", [range, "", AS_OF]).slice(1, -1);
    expect(troubles.map(([, column, found]) => [column, found])).toEqual(cells);
    const stages = askTable("BATCH_STAGES", [range, "", AS_OF]);
    expect(stages.map(({ Batch }) => Batch)).toEqual(["B2", "B1"]);
  });
});

describe("a batch of which nothing is known yet but its name and variety", () => {
  it("is a batch beside others of its table that are named alike", () => {
    const narrow = [
      ["Batch", "Variety", "Sown", "Seeds sown"],
      ["A-01", "Alba", "2026-09-03", 200],
      ["A-02", "Alba", "", ""],
      ["A-03", "Nera", "", ""],
    ];
    const stages = askTable("BATCH_STAGES", [narrow, "", AS_OF]);
    expect(stages.map(({ Batch, Remark }) => [Batch, Remark])).toEqual([
      ["A-01", expect.anything()],
      ["A-02", noDayYet()],
      ["A-03", noDayYet()],
    ]);
  });
});

describe("TAKE_SUMMARY of a log, one row an event", () => {
  it("is that of the same batches, one row a batch", () => {
    const table = [
      ["Batch", "Variety", "Grafted on", "Grafts made", "Take count day", "Takes"],
      ["B1", "Alba", "2026-08-01", 100, "2026-09-01", 80],
      ["B2", "Nera", "2026-08-02", 60, "2026-09-02", 30],
    ];
    const log = [
      ["Day", "Batch", "Variety", "Step", "Count"],
      ["2026-08-01", "B1", "Alba", "Grafting", 100],
      ["2026-08-02", "B2", "Nera", "Grafting", 60],
      ["2026-09-01", "B1", "Alba", "Take count", 80],
      ["2026-09-02", "B2", "Nera", "Take count", 30],
    ];
    expect(askRows("TAKE_SUMMARY", [log, "Variety"])).toEqual(
      askRows("TAKE_SUMMARY", [table, "Variety"]),
    );
  });
});
