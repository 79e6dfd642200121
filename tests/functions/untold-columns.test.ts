import { describe, expect, it } from "vitest";
import * as text from "../../src/sentences/made/records";
import { askRows } from "../support/ask";

/** Headers from memory of how offices write; invented. */
const RECORDS = [
  ["Batch", "Variety", "Graft date", "Grafts made", "Alive", "Moved out", "Zebra", "Weather"],
  ["T1", "Alba", "2026-09-01", 120, 96, "2026-10-06", 4, "windy"],
  ["T2", "Nera", "2026-09-08", 80, 61, "2026-10-13", 5, ""],
];
const TOLD = [
  ["Takes", "Alive"],
  ["Leave alone", "Moved out"],
];
const said = (name: string, args: readonly unknown[]) =>
  askRows(name, args).flat().map(String).join("\n");
const LEFT = text.columnsLeftAlone({ columns: ["Moved out"] });

// A formula without the told columns gave other answers than the tabs, without a hint.
describe("a formula that is told nothing of columns", () => {
  it.each([
    ["BATCH_BALANCE", [RECORDS]],
    ["BATCH_DUE", [RECORDS, "", "2026-11-25"]],
    ["WORK_NEEDS", [RECORDS, "", "2026-11-25"]],
  ] as const)("%s names the columns of days that it leaves alone", (name, args) => {
    expect(said(name, args)).toContain(LEFT);
  });

  it("says nothing of texts and numbers, and of what it was asked for", () => {
    const answer = said("BATCH_BALANCE", [RECORDS]);
    for (const column of ["Zebra", "Weather"]) expect(answer).not.toContain(column);
    const takes = RECORDS.map((row) => row.map((cell) => (cell === "Alive" ? "Takes" : cell)));
    expect(said("TAKE_SUMMARY", [takes, "Moved out"])).not.toContain(LEFT);
    expect(said("TAKE_SUMMARY", [takes, "Variety"])).toContain(LEFT);
  });

  it("says nothing once it is told, and BATCH_CHECK lists each anyway", () => {
    expect(said("BATCH_BALANCE", [RECORDS, TOLD])).not.toContain("Moved out");
    expect(said("BATCH_CHECK", [RECORDS])).not.toContain(LEFT);
    expect(said("BATCH_CHECK", [RECORDS])).toContain("Moved out");
  });

  it("names five, then counts", () => {
    const names = ["Q1", "Q2", "Q3", "Q4", "Q5", "Q6", "Q7"].map((name) => `Zebra ${name}`);
    const many = [
      [...(RECORDS[0] as string[]).slice(0, 4), ...names],
      ["T1", "Alba", "2026-09-01", 120, ...names.map(() => "2026-09-01")],
    ];
    const columns = [...names.slice(0, 5), text.moreColumns({ more: 2 })];
    expect(said("BATCH_BALANCE", [many])).toContain(text.columnsLeftAlone({ columns }));
  });
});
