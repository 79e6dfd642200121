import { describe, expect, it } from "vitest";
import { type Nursery, openNursery, smallRecords, smallRow, takesOf } from "./nursery";

const small = () => openNursery([smallRecords()]).ready();

/** Runs an action just after the records were read: before the n-th look at something after that. */
function afterTheRead({ w }: Nursery, action: () => void): void {
  // The identity of a write is asked for once everything is read and thought out.
  w.meter.before("Utilities.getUuid", action);
}

describe("another person's edit between reading and writing", () => {
  it.each(["L2", "M2"])("in %s is not overwritten, and nothing else is written", (cell) => {
    const nursery = small();
    afterTheRead(nursery, () => nursery.w.type("Records", cell, "7"));
    const answer = nursery.ask("sidebarRecord", takesOf("B1"));
    expect(answer.written).toEqual([]);
    expect(answer.asked).toHaveLength(1);
    const row = nursery.values("Records")[1];
    expect([row?.[11], row?.[12]]).toEqual(cell === "L2" ? [7, ""] : ["", 7]);
    expect(
      nursery
        .values("Write log")
        .slice(2)
        .map((line) => line.at(-1)),
    ).toEqual(["not written", "not written"]);
    // Asked again, both values are shown.
    const [question] = nursery.ask("sidebarRecord", takesOf("B1")).asked;
    expect(question?.stands).toMatch(/^7$|1900|1899/);
  });

  it("is not overwritten though the person was sure of what stood there before", () => {
    const nursery = small();
    nursery.sheet("Records").getRange("M2").setValue(55);
    const sure = nursery.ask("sidebarRecord", takesOf("B1")).asked.map(({ id }) => id);
    afterTheRead(nursery, () => nursery.w.type("Records", "M2", "56"));
    expect(nursery.ask("sidebarRecord", takesOf("B1", { sure })).written).toEqual([]);
    expect(nursery.value("Records", "M2")).toBe(56);
  });

  it("that puts a row in above does not bring the count to another batch", () => {
    const nursery = openNursery([
      smallRecords(smallRow({ Batch: "B3", Sown: "2026-11-01", "Seeds sown": 50 })),
    ]).ready();
    afterTheRead(nursery, () => {
      nursery.sheet("Records").insertRowsAfter(1, 1);
    });
    const answer = nursery.ask("sidebarRecord", takesOf("B2"));
    const found = nursery
      .values("Records")
      .slice(2)
      .map((row) => [row[0], row[11], row[12]]);
    const written = answer.written.length > 0;
    expect(found).toEqual([
      ["B1", "", ""],
      ["B2", written ? "2026-11-24" : "", written ? 60 : ""],
      ["B3", "", ""],
    ]);
  });

  it("that puts a column in before does not bring the count under another header", () => {
    const nursery = small();
    // With a blank on either side nothing but the header tells the columns apart.
    nursery.sheet("Records").getRange("K2").setValue("");
    afterTheRead(nursery, () => {
      nursery.sheet("Records").insertColumnsAfter(1, 1);
      nursery.sheet("Records").getRange("B1").setValue("Mine");
    });
    const answer = nursery.ask("sidebarRecord", takesOf("B1"));
    const row = nursery.values("Records")[1] ?? [];
    const written = answer.written.length > 0;
    expect(row.slice(11, 15)).toEqual(["", written ? "2026-11-24" : "", written ? 60 : "", ""]);
  });

  it("that comes while a write is taken back is left, and so is the rest", () => {
    const nursery = small();
    const { logId } = nursery.ask("sidebarRecord", takesOf("B1"));
    nursery.w.meter.before("Range.setValues", () => nursery.w.type("Records", "M2", "63"));
    nursery.w.run("sidebarTakeBack", { logId });
    expect(nursery.value("Records", "M2")).toBe(63);
  });

  it("who holds the lock makes the other wait and try again, with nothing written", () => {
    const nursery = small();
    const other = nursery.w.begin();
    // biome-ignore lint/suspicious/noExplicitAny: a script has no types either
    (other.globals as any).LockService.getDocumentLock().tryLock(1);
    const before = nursery.snapshot("Records");
    expect(nursery.fault("sidebarRecord", takesOf("B1"))).toEqual({ code: "busy" });
    expect(nursery.snapshot("Records")).toBe(before);
    other.end();
    expect(nursery.ask("sidebarRecord", takesOf("B1")).written).toHaveLength(2);
  });
});
