import { describe, expect, it } from "vitest";
import { openNursery, smallRecords, takesOf } from "./nursery";

const small = () => openNursery([smallRecords()]).ready();
const states = (nursery: ReturnType<typeof small>) =>
  nursery
    .values("Write log")
    .slice(2)
    .map((row) => row.at(-1));

describe("taking a write back", () => {
  it("puts back what stood there, and says so in the log", () => {
    const nursery = small();
    nursery.sheet("Records").getRange("P2").setValue("'=as it was");
    const before = nursery.snapshot("Records");
    const request = takesOf("B1", { note: "dry" });
    const sure = nursery.ask("sidebarRecord", request).asked.map(({ id }) => id);
    const { logId } = nursery.ask("sidebarRecord", { ...request, sure });
    expect(nursery.value("Records", "P2")).toBe("dry");
    const { restored, asked } = nursery.ask("sidebarTakeBack", { logId: logId ?? "" });
    expect(asked).toEqual([]);
    expect(restored.map(({ where }) => where)).toEqual(["Records!L2", "Records!M2", "Records!P2"]);
    expect(nursery.snapshot("Records")).toBe(before);
    expect(states(nursery)).toEqual(["taken back", "taken back", "taken back"]);
    for (const gone of [logId ?? "", "no such"]) {
      expect(nursery.fault("sidebarTakeBack", { logId: gone })).toEqual({ code: "notInLog" });
    }
    expect(nursery.w.lock.isFree()).toBe(true);
  });

  it("is refused whole when one of the cells was changed since", () => {
    const nursery = small();
    const { logId } = nursery.ask("sidebarRecord", takesOf("B1"));
    nursery.sheet("Records").getRange("M2").setValue(62);
    const before = nursery.snapshot("Records");
    const { restored, asked } = nursery.ask("sidebarTakeBack", { logId: logId ?? "" });
    expect(restored).toEqual([]);
    expect(asked.map(({ stands }) => stands)).toEqual(["62"]);
    expect(asked[0]?.ask).toEqual({
      code: "changedSince",
      header: "Takes",
      cell: "M2",
      stands: "62",
      wrote: "60",
    });
    expect(nursery.snapshot("Records")).toBe(before);
    expect(states(nursery)).toEqual(["written", "written"]);
  });

  it("finds the batch again where rows have moved, and never touches another batch", () => {
    const nursery = small();
    const first = nursery.ask("sidebarRecord", takesOf("B1"));
    const second = nursery.ask("sidebarRecord", takesOf("B2"));
    // Both batches hold the same day and count, so the cells alone can't be told apart.
    nursery.sheet("Records").insertRowsAfter(1, 1);
    nursery.ask("sidebarTakeBack", { logId: second.logId ?? "" });
    expect(
      nursery
        .values("Records")
        .slice(2)
        .map((row) => [row[0], row[11], row[12]]),
    ).toEqual([
      ["B1", "2026-11-24", 60],
      ["B2", "", ""],
    ]);
    nursery.ask("sidebarTakeBack", { logId: first.logId ?? "" });
    expect(nursery.value("Records", "L3")).toBe("");
  });

  it("finds the column again where one was put in, and refuses where the batch is gone", () => {
    const nursery = small();
    const { logId } = nursery.ask("sidebarRecord", takesOf("B1"));
    nursery.sheet("Records").insertColumnsAfter(1, 1);
    nursery.sheet("Records").getRange("A2").setValue("B1-renamed");
    const before = nursery.snapshot("Records");
    expect(nursery.fault("sidebarTakeBack", { logId: logId ?? "" })).toEqual({
      code: "taskGone",
      task: "Take count",
      batch: "B1",
      cells: ["L2", "M2"],
    });
    expect(nursery.snapshot("Records")).toBe(before);
    nursery.sheet("Records").getRange("A2").setValue("B1");
    nursery.ask("sidebarTakeBack", { logId: logId ?? "" });
    expect(nursery.values("Records")[1]?.slice(12, 14)).toEqual(["", ""]);
  });

  it("does not write over a formula that came to stand there since", async () => {
    const nursery = small();
    const { logId } = nursery.ask("sidebarRecord", takesOf("B1"));
    // It shows the very number that was written.
    nursery.sheet("Records").getRange("M2").setFormula("=J2*0.75");
    await nursery.w.settled();
    const before = nursery.snapshot("Records");
    const { restored, asked } = nursery.ask("sidebarTakeBack", { logId: logId ?? "" });
    expect([restored.length, asked.length]).toEqual([0, 1]);
    expect(nursery.snapshot("Records")).toBe(before);
  });

  it("works though the log was sorted or lines of it were deleted", () => {
    const nursery = small();
    nursery.ask("sidebarRecord", takesOf("B1"));
    const { logId } = nursery.ask("sidebarRecord", takesOf("B2"));
    nursery.sheet("Write log").deleteRows(3, 1);
    nursery.ask("sidebarTakeBack", { logId: logId ?? "" });
    expect(states(nursery)).toEqual(["written", "taken back", "taken back"]);
  });
});
