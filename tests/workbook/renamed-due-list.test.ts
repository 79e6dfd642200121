import { expect, it } from "vitest";
import * as text from "../../src/sentences/made/due-rows";
import { openNursery, type Sheet, smallRecords, tab } from "./nursery";

const RENAMED = "This week";

/** Row of a batch's take count in a due list of any name, from 1. */
function rowOf(sheet: Sheet, batch: string): number {
  const values: unknown[][] = sheet.getDataRange().getValues();
  const row = values.findIndex((cells) => cells.includes("Take count") && cells.includes(batch));
  if (row === -1) throw new Error(`no Take count of ${batch}`);
  return row + 1;
}

function renamed() {
  const nursery = openNursery([smallRecords(), tab("Notes", [["mine"]])], { newRows: 60 }).ready();
  const list = nursery.sheet("Due list");
  list.setName(RENAMED);
  return { nursery, list };
}

// People renamed the tab; their ticks did nothing, and nothing said so.
it("ticks and counts in a due list of another name are written, and said in its rows", async () => {
  const { nursery, list } = renamed();
  const row = rowOf(list, "B1");
  nursery.w.type(RENAMED, `F${row}`, "60");
  await nursery.w.settled();
  nursery.w.type(RENAMED, `A${row}`, "TRUE");
  await nursery.w.settled();
  expect(nursery.w.editErrors).toEqual([]);
  expect(nursery.value("Records", "M2")).toBe(60);
  expect(list.getRange(`J${row}`).getValue()).toBe(
    `✓ ${text.written({ cells: "Records!L2, Records!M2" })}`,
  );
  nursery.w.type(RENAMED, `A${row}`, "FALSE");
  await nursery.w.settled();
  expect(nursery.value("Records", "M2")).toBe("");
});

it("is filled again under its name by the menu, by its box and by Set up; no second one is made", async () => {
  const { nursery, list } = renamed();
  const tabs = nursery.tabs();
  list.getRange(`H${rowOf(list, "B2")}`).setValue("dry");
  list.getRange(`F${rowOf(list, "B1")}:F${rowOf(list, "B1")}`).setValue(60);
  list.getRange(`A${rowOf(list, "B1")}`).setValue(true);
  nursery.w.call("writeTicked");
  expect(nursery.value("Records", "M2")).toBe(60);
  nursery.w.call("refreshDueList");
  expect(() => rowOf(list, "B1")).toThrow("no Take count of B1");
  expect(list.getRange(`H${rowOf(list, "B2")}`).getValue()).toBe("dry");
  nursery.w.type(RENAMED, "D1", "TRUE");
  await nursery.w.settled();
  expect(nursery.w.editErrors).toEqual([]);
  expect(list.getRange("D1").getValue()).toBe(false);
  const { made } = nursery.ask("sidebarSetUp", { tab: "Records", columns: [], methods: [] });
  expect(made).toContain(RENAMED);
  expect(nursery.tabs().sort()).toEqual(tabs.sort());
});

it("is found with its title row gone or a column put in before it", async () => {
  for (const tidy of [
    (list: Sheet) => list.deleteRows(1, 1),
    (list: Sheet) => list.insertColumnsBefore(1, 1),
    (list: Sheet) => list.insertRowsBefore(1, 1),
  ]) {
    const { nursery, list } = renamed();
    tidy(list);
    const row = rowOf(list, "B1");
    const isFirst = list.getRange(row, 1).getValue() === false;
    nursery.w.type(RENAMED, `${isFirst ? "F" : "G"}${row}`, "60");
    await nursery.w.settled();
    // The first entry has put the list right.
    nursery.w.type(RENAMED, `A${rowOf(nursery.sheet(RENAMED), "B1")}`, "TRUE");
    await nursery.w.settled();
    expect(nursery.w.editErrors).toEqual([]);
    expect(nursery.value("Records", "L2")).toBe("2026-11-25");
  }
});

it("a copy beside the due list writes nothing, and its row says which tab does", async () => {
  const { nursery, list } = renamed();
  const values = list.getDataRange().getValues();
  list.setName("Due list");
  const copy = nursery.sheet("Notes");
  copy.getRange(1, 1, values.length, values[0].length).setValues(values);
  const row = rowOf(copy, "B1");
  nursery.w.type("Notes", `A${row}`, "TRUE");
  await nursery.w.settled();
  expect(nursery.w.editErrors).toEqual([]);
  expect(nursery.value("Records", "L2")).toBe("");
  expect(copy.getRange(`J${row}`).getValue()).toBe(
    `! ${text.notWritten({ why: text.copy({ tab: "Due list" }) })}`,
  );
});
