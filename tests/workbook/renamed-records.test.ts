import { expect, it } from "vitest";
import { notWritten } from "../../src/sentences/made/due-rows";
import * as setUp from "../../src/sentences/made/set-up";
import { dueRow, dueValue, enterDue } from "./due-list";
import { openNursery, smallRecords, tab, takesOf } from "./nursery";
import { writtenText } from "./row-texts";

// People renamed the tab; their ticks were written nowhere, and nothing said so.
it.each(["Our batches", "Lot's book", "Records_2027"])(
  "records that are called %j by now are found",
  async (name) => {
    const other = tab("Notes", [["mine"]]);
    const nursery = openNursery([other, smallRecords()], { live: true }).ready();
    await nursery.w.settled();
    const { logId } = nursery.ask("sidebarRecord", takesOf("B2"));
    nursery.sheet("Records").setName(name);
    await nursery.w.settled();
    const row = dueRow(nursery, "B1");
    await enterDue(nursery, row, { Count: "60", Done: "TRUE" });
    expect(nursery.w.editErrors).toEqual([]);
    expect(nursery.value(name, "M2")).toBe(60);
    expect(dueValue(nursery, "Written", row)).toBe(writtenText(`${name}!L2`, `${name}!M2`));
    expect(nursery.ask("sidebarToday", { daysAhead: 7 }).tasks.length).toBeGreaterThan(0);
    // What was written under the old name is taken back as well.
    nursery.ask("sidebarTakeBack", { logId: logId ?? "" });
    expect(nursery.value(name, "M3")).toBe("");
    nursery.w.call("refreshDueList");
    await nursery.w.settled();
    expect(nursery.sheet("Due list").getRange("C1").getFormula()).toContain(
      name.replace(/'/g, "''"),
    );
  },
);

it("records that are gone are said to be, in the row that was ticked", async () => {
  const nursery = openNursery([tab("Notes", [["mine"]]), smallRecords()]).ready();
  const row = dueRow(nursery, "B1");
  nursery.remove("Records");
  await enterDue(nursery, row, { Count: "60", Done: "TRUE" });
  expect(dueValue(nursery, "Written", row)).toBe(
    `! ${notWritten({ why: setUp.tabGone({ tab: "Records" }) })}`,
  );
  expect(nursery.values("Notes")).toEqual([["mine"]]);
});

it("ticks are written where a person has put a column in before the boxes", async () => {
  const nursery = openNursery([smallRecords()]).ready();
  const due = nursery.sheet("Due list");
  due.insertColumnsBefore(1, 1);
  due.getRange("A1:A40").setDataValidation(null);
  due.getRange("A2:A3").setValues([["Ours"], ["first"]]);
  const row = dueRow(nursery, "B1");
  await enterDue(nursery, row, { Count: "60", Done: "TRUE" });
  expect(nursery.w.editErrors).toEqual([]);
  expect(nursery.value("Records", "M2")).toBe(60);
  expect(nursery.values("Due list").flat()).toContain("first");
});

it("a wrong name in the settings is no old one", async () => {
  const nursery = openNursery([smallRecords()], { live: true }).ready();
  await nursery.w.settled();
  nursery.sheet("Nursery settings").getRange("B3").setValue("Recordz");
  expect(nursery.refusal("sidebarToday", { daysAhead: 7 })).toBe(setUp.tabGone({ tab: "Recordz" }));
});
