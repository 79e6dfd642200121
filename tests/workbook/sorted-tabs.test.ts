import { describe, expect, it } from "vitest";
import { live } from "../../src/sentences/made/own-tabs";
import { MARK } from "../../src/workbook/host/mark";
import { dueRow, dueRows, setDue } from "./due-list";
import { type Nursery, openNursery, type Sheet, smallRecords, takesOf } from "./nursery";
import { atWork, DUE, goesOn, KINDS, LOG, ONCE, PLAN } from "./tabs-at-work";

let start: ReturnType<Nursery["saved"]> | null = null;
/** The nursery at work, opened anew; made once. */
function again(more: { readonly keepsFiltered?: boolean } = {}): Nursery {
  start ??= atWork().saved();
  return openNursery(start, { newRows: 60, ...more });
}

const from = (sheet: Sheet, row: number) =>
  sheet.getRange(row, 1, Math.max(1, sheet.getLastRow() - row + 1), sheet.getLastColumn());

/** How far up people sort, and by which column each way. */
type By = { readonly column: number; readonly ascending: boolean };
const SORTED = {
  "below its header": (sheet: Sheet, { column, ascending }: By) => sheet.sort(column, ascending),
  "with its header": (sheet: Sheet, by: By) => from(sheet, 2).sort(by),
  "with its title": (sheet: Sheet, by: By) => from(sheet, 1).sort(by),
};
const BY = [
  ["below its header", 1, false],
  ["below its header", 13, true],
  ["with its header", 1, false],
  ["with its header", 3, true],
  ["with its title", 1, false],
  ["with its title", 2, true],
  ["with its title", 3, false],
  ["with its title", 13, true],
] as const;

// People saw "has lines of yours above its header" of lines that were none of theirs, or that the tab
// is not the add-in's.
it.each(BY)(
  "sorted %s by column %d, all tabs at once: everything goes on",
  (how, column, ascending) => {
    const nursery = again();
    for (const name of KINDS) SORTED[how](nursery.sheet(name), { column, ascending });
    goesOn(nursery);
  },
);

it.each(KINDS)("%s alone, sorted with its title: everything goes on", (name) => {
  const nursery = again();
  from(nursery.sheet(name), 1).sort({ column: 1, ascending: true });
  goesOn(nursery);
});

it("ticks and counts move with their rows when the due list is sorted", () => {
  const nursery = again();
  const rows = () => dueRows(nursery, ["Done", "Count", "Note", "Task", "Batch"]);
  setDue(nursery, dueRow(nursery, "B2"), { Done: true });
  const sorted = (all: ReturnType<typeof rows>) => all.map((row) => JSON.stringify(row)).sort();
  const before = rows();
  nursery.sheet(DUE).sort(13, true);
  expect(rows()).not.toEqual(before);
  expect(sorted(rows())).toEqual(sorted(before));
  nursery.w.call("writeTicked");
  expect(nursery.value("Records", "M3")).toBe(61);
});

it("the last writes are told in the order of their times, however the log is sorted", () => {
  const nursery = again();
  nursery.ask("sidebarRecord", takesOf("B2"));
  const log = nursery.sheet(LOG);
  const lines = nursery.values(LOG).flatMap((line, at) => (line[6] === "B2" ? [at + 1] : []));
  for (const row of lines) log.getRange(`B${row}`).setValue("'2099-01-01 10:00");
  const told = () => nursery.ask("sidebarLastWrites", null).writes.map(({ about }) => about);
  const before = told();
  expect(before).toEqual(["B2", "B1"]);
  log.sort(7, false);
  expect(told()).toEqual(before);
});

it("a live tab that was sorted answers as before", async () => {
  const nursery = openNursery([smallRecords()], { newRows: 60, live: true }).ready();
  await nursery.w.settled();
  const stages = nursery.sheet("Stages");
  const shown = () => nursery.values("Stages").filter((row) => row[1] !== "");
  const before = shown();
  expect(before).toHaveLength(3);
  const title = String(nursery.value("Stages", "A1"));
  // It is written with the marks that all locales take.
  const formula = stages.getRange("A3").getFormula().replaceAll(",", ";");
  expect(title).toBe(`${MARK} ${live({ formula: formula.slice(1) })}`);
  // What a formula fills in is not moved.
  stages.sort(1, false);
  await nursery.w.settled();
  expect(shown()).toEqual(before);
  for (const ascending of [true, false]) {
    from(stages, 1).sort({ column: 1, ascending });
    await nursery.w.settled();
    nursery.ask("sidebarSetUp", ONCE);
    await nursery.w.settled();
    expect(shown()).toEqual(before);
    expect(nursery.value("Stages", "A1")).toBe(title);
  }
});

it("a plan that was sorted with its header follows what is asked", async () => {
  const nursery = openNursery([smallRecords()], { newRows: 60, live: true }).ready();
  nursery.ask("sidebarOrderTab", PLAN);
  await nursery.w.settled();
  const plan = nursery.sheet("Plan O-1");
  const steps = () => nursery.values("Plan O-1").filter((row) => row[0] === "Grafting");
  const before = steps();
  expect(before).toHaveLength(1);
  // "O-1" comes to stand above "Order".
  plan.getRange("A2:G3").sort(1);
  await nursery.w.settled();
  expect(steps()).toEqual([]);
  nursery.ask("sidebarSetUp", ONCE);
  await nursery.w.settled();
  expect(steps()).toEqual(before);
});

const hiding = ({ w }: Nursery, ...texts: string[]): unknown =>
  // biome-ignore lint/suspicious/noExplicitAny: a script has no types either
  (w.uncounted() as any).SpreadsheetApp.newFilterCriteria().setHiddenValues(texts).build();

describe.each([true, false])("filtered, where hidden rows keep what they hold (%s)", (keeps) => {
  it("in every tab and in the records: everything goes on", () => {
    const nursery = again({ keepsFiltered: keeps });
    const hidden = { Records: "none", [DUE]: "B1", [LOG]: "B1" };
    for (const name of [...KINDS, "Records"]) {
      const sheet = nursery.sheet(name);
      const [text, column] = [
        hidden[name as keyof typeof hidden] ?? "Value",
        name === DUE ? 14 : 1,
      ];
      if (sheet.getLastColumn() < column) continue;
      const filter = from(sheet, name === "Records" ? 1 : 2).createFilter();
      filter.setColumnFilterCriteria(column, hiding(nursery, text));
    }
    goesOn(nursery);
  });

  it("the due list is whole after a refresh, and hides what it hid", () => {
    const nursery = again({ keepsFiltered: keeps });
    const due = nursery.sheet(DUE);
    const column = 14;
    const filter = from(due, 2).createFilter();
    filter.setColumnFilterCriteria(column, hiding(nursery, "B1"));
    // A late task comes first, so that all others move down.
    nursery.sheet("Records").getRange("I3").setValue("2026-09-01");
    nursery.w.call("refreshDueList");
    const batches = dueRows(nursery, ["Batch"]).flat();
    const plain = again();
    plain.sheet("Records").getRange("I3").setValue("2026-09-01");
    plain.w.call("refreshDueList");
    expect(batches).toEqual(dueRows(plain, ["Batch"]).flat());
    expect(batches).toContain("B1");
    expect(batches.map((_, at) => due.isRowHiddenByFilter(at + 3))).toEqual(
      batches.map((batch) => batch === "B1"),
    );
  });
});

it("rows and columns hidden by hand: everything goes on, and they stay hidden", () => {
  const nursery = again();
  for (const name of KINDS) {
    const sheet = nursery.sheet(name);
    sheet.hideRows(1, 3);
    sheet.hideColumns(1, Math.min(3, sheet.getMaxColumns()));
  }
  goesOn(nursery);
  for (const name of KINDS) {
    const sheet = nursery.sheet(name);
    expect([name, sheet.isRowHiddenByUser(3), sheet.isColumnHiddenByUser(2)]).toEqual([
      ...[name, true, true],
    ]);
  }
});

// A ninth of the calls; what is moved or taken off meanwhile must never be lost.
it("a call that fails while a sorted and filtered list is put right loses nothing", () => {
  const opened = () => {
    const nursery = again();
    const due = nursery.sheet(DUE);
    from(due, 1).sort({ column: 13, ascending: true });
    from(due, 1).createFilter().setColumnFilterCriteria(14, hiding(nursery, "B1"));
    due.getRange("M20").setValue("call Ana");
    nursery.w.meter.reset();
    return nursery;
  };
  const whole = opened();
  whole.w.call("refreshDueList");
  const calls = [...whole.w.meter.calls.values()].reduce((sum, times) => sum + times, 0);
  const rows = (nursery: Nursery) =>
    dueRows(nursery, ["Done", "Count", "Who", "Note", "Task", "Batch"]);
  for (let call = 3; call <= calls; call += 9) {
    const nursery = opened();
    nursery.w.meter.failAt(call);
    try {
      nursery.w.call("refreshDueList");
    } catch {
      // The person tries again.
    }
    nursery.w.meter.reset();
    nursery.w.call("refreshDueList");
    expect([call, rows(nursery)]).toEqual([call, rows(whole)]);
  }
});
