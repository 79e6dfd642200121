import { describe, expect, it } from "vitest";
import { dayWords } from "../../src/wording/days";
import { day } from "../support/days";
import { dueRow, enterDue } from "./due-list";
import { type Made, openNursery, tab, takesOf } from "./nursery";

const HEADER = ["Date", "Batch", "What was done", "How many", "Who", "Remarks"];
const LINES: Made[][] = [
  ["2026-07-20", "B1", "Sown", 100, "Sil", null],
  ["2026-07-30", "B1", "Germination", 90, "Sil", null],
  ["2026-10-24", "B1", "Grafting", 80, "Tavi", null],
];
const log = () => openNursery([tab("Records", [HEADER, ...LINES])]).ready();

describe("records that are one line a job", () => {
  it("get a new line below, which is then read as done", () => {
    const nursery = log();
    const before = nursery.values("Records");
    const { written } = nursery.ask("sidebarRecord", takesOf("B1", { who: "Sil", note: "dry" }));
    expect(written.map(({ where }) => where).sort()).toEqual(
      ["A5", "B5", "C5", "D5", "E5", "F5"].map((cell) => `Records!${cell}`),
    );
    expect(nursery.values("Records")).toEqual([
      ...before,
      ["2026-11-24", "B1", "Take count", 60, "Sil", "dry"],
    ]);
    const due = nursery.ask("sidebarToday", { daysAhead: 7 }).tasks.map(({ task }) => task);
    expect(due).not.toContain("Take count");
  });

  it("take the line back whole", () => {
    const nursery = log();
    const before = nursery.snapshot("Records");
    const { logId } = nursery.ask("sidebarRecord", takesOf("B1", { who: "Sil" }));
    nursery.ask("sidebarTakeBack", { logId: logId ?? "" });
    expect(nursery.snapshot("Records")).toBe(before);
  });

  it("get a line though the sheet is full to its last row", () => {
    const nursery = log();
    const sheet = nursery.sheet("Records");
    sheet.deleteRows(LINES.length + 2, sheet.getMaxRows() - LINES.length - 1);
    expect(nursery.ask("sidebarRecord", takesOf("B1")).written.length).toBeGreaterThan(3);
    expect(nursery.values("Records").at(-1)?.slice(1, 4)).toEqual(["B1", "Take count", 60]);
  });

  it("do not get the same job twice unasked", () => {
    const nursery = log();
    nursery.ask("sidebarRecord", takesOf("B1"));
    expect(nursery.fault("sidebarRecord", takesOf("B1")).code).toBe("thereAlready");
    const [asked] = nursery.ask("sidebarRecord", takesOf("B1", { day: "2026-11-25" })).asked;
    expect(asked?.ask).toEqual({
      code: "lineCounted",
      step: "Take count",
      batch: "B1",
      row: "5",
      day: dayWords(day("2026-11-24")),
      count: 60,
    });
    expect(nursery.values("Records")).toHaveLength(LINES.length + 2);
  });

  it("get a count that comes after the tick into the line that the tick made", async () => {
    const nursery = log();
    await enterDue(nursery, dueRow(nursery, "B1"), { Done: "TRUE", Count: "60" });
    expect(nursery.w.editErrors).toEqual([]);
    expect(nursery.values("Records").slice(LINES.length + 1)).toEqual([
      ["2026-11-25", "B1", "Take count", 60, "", ""],
    ]);
  });

  it("can be marked done from the sidebar", () => {
    const task = log()
      .ask("sidebarToday", { daysAhead: 7 })
      .tasks.find((one) => one.task === "Take count");
    expect(task).toMatchObject({ dayHeader: "Date", countHeader: "How many" });
  });

  it("get no line where another table stands below, which would swallow it", () => {
    const below: Made[][] = [
      [null],
      ["Batch", "Variety", "Sown", "Grafted on"],
      ["B1", "Amberlow", "2026-07-20", null],
    ];
    const nursery = openNursery([tab("Records", [HEADER, ...LINES, ...below])]).ready();
    const before = nursery.snapshot("Records");
    expect(nursery.fault("sidebarRecord", takesOf("B1")).code).toBe("lineNotRead");
    expect(nursery.snapshot("Records")).toBe(before);
  });

  it("never share a line with what another person added in between", () => {
    const nursery = log();
    nursery.w.meter.before("Utilities.getUuid", () =>
      nursery.w.paste("Records", "A5", [["2026-11-24", "B7", "Sown"]]),
    );
    const { written, asked } = nursery.ask("sidebarRecord", takesOf("B1", { note: "dry" }));
    expect([written.length, asked.length]).toEqual([0, 1]);
    expect(nursery.values("Records").at(-1)).toEqual(["2026-11-24", "B7", "Sown", "", "", ""]);
  });
});
