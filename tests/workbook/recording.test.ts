import { describe, expect, it } from "vitest";
import {
  type Made,
  openNursery,
  SMALL_HEADER,
  smallRecords,
  smallRow,
  tab,
  takesOf,
} from "./nursery";

const small = (more?: readonly Made[]) =>
  openNursery([more ? smallRecords(more) : smallRecords()]).ready();

describe("recording a task", () => {
  it("says a sentence where the script belongs to no workbook", () => {
    const nursery = openNursery([smallRecords()], { hasDocumentLock: false });
    expect(nursery.fault("sidebarRecord", takesOf("B1"))).toEqual({ code: "noWorkbook" });
  });

  it("writes day and count into the batch's row, into blank cells only", () => {
    const nursery = small();
    const before = nursery.values("Records");
    const answer = nursery.ask("sidebarRecord", takesOf("B2", { note: "dry", who: "Orrin" }));
    expect(answer.asked).toEqual([]);
    expect(answer.written.map(({ where, header }) => [where, header])).toEqual([
      ["Records!L3", "Take count day"],
      ["Records!M3", "Takes"],
      ["Records!P3", "Note"],
    ]);
    const after = before.map((row) => [...row]);
    after[2]?.splice(11, 2, "2026-11-24", 60);
    after[2]?.splice(15, 1, "dry");
    // The note's column was no part of the data before.
    expect(nursery.values("Records")[2]).toEqual(after[2]);
    expect(nursery.values("Records").slice(0, 2)).toEqual(before.slice(0, 2));
    expect(nursery.w.lock.isFree()).toBe(true);
  });

  it("takes the task off the list that comes next", () => {
    const nursery = small();
    const tasks = () =>
      nursery
        .ask("sidebarToday", { daysAhead: 7 })
        .tasks.filter(({ batch, task }) => batch === "B1" && task === "Take count");
    expect(tasks()).toHaveLength(1);
    nursery.ask("sidebarRecord", takesOf("B1"));
    expect(tasks()).toHaveLength(0);
  });

  it("puts every cell down in the log, with what stood there", () => {
    const nursery = small();
    const { logId } = nursery.ask("sidebarRecord", takesOf("B1", { who: "Orrin" }));
    const log = nursery.values("Write log").slice(2);
    expect(log.map((row) => [row[0], ...row.slice(2)])).toEqual([
      [
        logId,
        "Orrin",
        "Records",
        "L2",
        "Take count day",
        "B1",
        "Take count",
        "",
        "2026-11-24",
        "written",
      ],
      [logId, "Orrin", "Records", "M2", "Takes", "B1", "Take count", "", 60, "written"],
    ]);
  });

  it("writes who grafted into the column of grafters", () => {
    const nursery = small(
      smallRow({ Batch: "B3", Sown: "2026-08-10", "Germination day": "2026-08-20" }),
    );
    nursery.ask("sidebarRecord", {
      ...{ batch: "B3", task: "Grafting", day: "2026-11-24", count: 70, who: "Tavi", note: "" },
      sure: [],
    });
    expect([nursery.value("Records", "D4"), nursery.value("Records", "J4")]).toEqual(["Tavi", 70]);
  });

  it("writes days as days at midnight of the workbook's zone", () => {
    const nursery = openNursery([smallRecords()], { spreadsheetZone: "Asia/Makassar" }).ready();
    nursery.ask("sidebarRecord", takesOf("B1"));
    expect(nursery.value("Records", "L2")).toBe("2026-11-24");
    const cell = nursery.w.sheets()[0]?.rows[1]?.[11];
    expect(Number.isInteger(cell?.value)).toBe(true);
  });

  it.each([
    ["an unknown batch", { batch: "B9" }, { code: "noBatch", batch: "B9" }],
    ["an unknown task", { task: "Dancing" }, { code: "noStep", task: "Dancing" }],
    ["half a plant", { count: 1.5 }, { code: "notACount", found: "1.5" }],
    ["fewer than none", { count: -1 }, { code: "notACount", found: "-1" }],
    ["no day", { day: "" }, { code: "said" }],
    ["no such day", { day: "2026-02-30" }, { code: "said" }],
  ])("refuses %s with its reason", (_, more, reason) => {
    const nursery = small();
    const before = nursery.snapshot("Records");
    expect(nursery.fault("sidebarRecord", takesOf("B1", more))).toMatchObject(reason);
    expect(nursery.snapshot("Records")).toBe(before);
    expect(nursery.w.lock.isFree()).toBe(true);
  });

  it("refuses a name that two batches bear", () => {
    const nursery = small(smallRow({ Batch: "B1", Sown: "2026-07-01" }));
    expect(nursery.fault("sidebarRecord", takesOf("B1"))).toEqual({
      code: "twoBatches",
      batch: "B1",
      rows: ["2", "4"],
    });
  });

  it("asks about a count or a note for which the table has no column, and keeps both in the log", () => {
    const header = ["Batch", "Sown", "Grafted on", "Grafts made", "Take count day"];
    const nursery = openNursery([
      tab("Records", [header, ["B1", "2026-07-20", "2026-10-24", 80]]),
    ]).ready();
    const before = nursery.snapshot("Records");
    const request = takesOf("B1", { note: "dry" });
    const { asked, written } = nursery.ask("sidebarRecord", request);
    expect(written).toEqual([]);
    const lacks = { code: "columnLacks", task: "Take count" };
    expect(asked.map(({ ask }) => ask)).toEqual([
      { ...lacks, what: "count", value: "60" },
      { ...lacks, what: "note", value: "dry" },
    ]);
    expect(nursery.snapshot("Records")).toBe(before);
    const sure = asked.map(({ id }) => id);
    const { logId } = nursery.ask("sidebarRecord", { ...request, sure });
    const lines = () =>
      nursery
        .values("Write log")
        .slice(2)
        .map((row) => [row[4], row[5], row[9], row[10]]);
    expect(lines()).toEqual([
      ["E2", "Take count day", "2026-11-24", "written"],
      ["", "(count)", 60, "kept here"],
      ["", "(note)", "dry", "kept here"],
    ]);
    nursery.ask("sidebarTakeBack", { logId: logId ?? "" });
    expect(nursery.value("Records", "E2")).toBe("");
    expect(new Set(lines().map((line) => line[3]))).toEqual(new Set(["taken back"]));
  });

  it("says that it is there already when the very same is recorded twice", () => {
    const nursery = small();
    nursery.ask("sidebarRecord", takesOf("B1"));
    const before = nursery.snapshot("Records");
    expect(nursery.fault("sidebarRecord", takesOf("B1"))).toEqual({
      code: "thereAlready",
      task: "Take count",
      batch: "B1",
      cells: ["Take count day (Records!L2) 2026-11-24", "Takes (Records!M2) 60"],
    });
    expect(nursery.snapshot("Records")).toBe(before);
  });
});

describe("finding the row", () => {
  it("finds it again where rows were put in or taken out above", () => {
    const nursery = small();
    nursery.ask("sidebarToday", { daysAhead: 7 });
    nursery.sheet("Records").insertRowsAfter(1, 1);
    nursery
      .sheet("Records")
      .getRange("A2:E2")
      .setValues([["B0", "Amberlow", "", "", "2026-11-01"]]);
    expect(nursery.ask("sidebarRecord", takesOf("B1")).written[0]?.where).toBe("Records!L3");
    nursery.sheet("Records").deleteRows(2, 1);
    expect(nursery.ask("sidebarRecord", takesOf("B2")).written[0]?.where).toBe("Records!L3");
  });

  it("finds row and column again where the table was sorted and a column put in", () => {
    const nursery = small();
    const sheet = nursery.sheet("Records");
    const rows = sheet.getRange(2, 1, 2, SMALL_HEADER.length).getValues();
    sheet.getRange(2, 1, 2, SMALL_HEADER.length).setValues([rows[1], rows[0]]);
    sheet.insertColumnsAfter(1, 1);
    sheet.getRange("B1").setValue("Remarks of mine");
    expect(nursery.ask("sidebarRecord", takesOf("B1")).written[0]?.where).toBe("Records!M3");
  });
});
