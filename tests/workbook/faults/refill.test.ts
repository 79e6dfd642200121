import { expect, it } from "vitest";
import { dueRow, dueRows, setDue } from "../due-list";
import { GRAFTED, type Nursery, openNursery, smallRecords, smallRow } from "../nursery";
import { answered, called, callsToFail, isHalfMade, type Kind, wrongsAfter } from "./fail-in-turn";

const DUE = "Due list";

/** A due list in which people have entered things, before records that make it shorter by now. */
function prepare(): Nursery {
  // The last of them has a task in which nothing is entered, and goes from the list with its batch.
  const third = smallRow({ Batch: "B3", ...GRAFTED, "First release": "2026-11-07" });
  const nursery = openNursery([smallRecords(third)], { newRows: 60 }).ready();
  setDue(nursery, dueRow(nursery, "B1"), { Count: 61, Who: "Orrin", Note: "dry" });
  // Ticked and refused: more than were grafted.
  setDue(nursery, dueRow(nursery, "B2"), { Done: true, Count: 99 });
  const { length } = nursery.values(DUE);
  setDue(nursery, length, { Note: "after the rain" });
  nursery.sheet(DUE).getRange(length, 22).setValue("beside");
  nursery.sheet("Records").getRange("A3:P4").clearContent();
  return nursery;
}

/** How many rows the list has. */
const tasks = (nursery: Nursery) =>
  dueRows(nursery, ["Task"]).filter(([task]) => task !== "").length;

/** What people have entered, as often as it stands there, and whether the rest of its row is its own. */
function entered(nursery: Nursery): string[] {
  return dueRows(nursery, ["Done", "Count", "Who", "Note", "Task", "Batch"])
    .filter((row) => row[0] === true || row.slice(1, 4).some((cell) => cell !== ""))
    .map((row) => JSON.stringify(row))
    .sort();
}

const run = (nursery: Nursery) => called(nursery, "refreshDueList");

it.each<[string, Kind]>([
  ["does nothing and throws", "failAt"],
  ["does its work and throws", "failAfter"],
  ["throws, and all that follow", "stopAt"],
])(
  "a service call that %s loses nothing that was entered, and the next run mends the list",
  (_, kind) => {
    const model = prepare();
    const start = model.saved();
    const [rowsBefore, kept] = [tasks(model), entered(model)];
    const calls = callsToFail(model, { run, long: true }, kind);
    const after = model.snapshot(DUE);
    expect(tasks(model)).toBeLessThan(rowsBefore);
    expect(entered(model)).toEqual(kept);
    const judge = (nursery: Nursery) => {
      const wrong: string[] = [];
      const left = nursery.snapshot(DUE);
      if (isHalfMade(nursery, DUE)) {
        const stands = new Set(entered(nursery));
        if (kept.some((one) => !stands.has(one))) wrong.push("an entry is gone");
        if (stands.size > kept.length) wrong.push("an entry beside another task");
      } else if (JSON.stringify(entered(nursery)) !== JSON.stringify(kept)) {
        wrong.push(`entered: ${entered(nursery)}`);
      } else if (left !== after && tasks(nursery) !== rowsBefore) {
        wrong.push("neither the old list nor the new one");
      }
      if (!run(nursery)) wrong.push("never works again");
      else if (nursery.snapshot(DUE) !== after) wrong.push("is not mended");
      return wrong;
    };
    expect(wrongsAfter({ start, run, calls, kind, judge })).toEqual({});
  },
  300_000,
);

it.each<[string, Kind]>([
  ["does nothing and throws", "failAt"],
  ["does its work and throws", "failAfter"],
])(
  "a service call that %s leaves each live tab on the old table, on the new one, or saying so",
  (_, kind) => {
    const live = ["Stages", "Ready by month", "Takes", "Takes by month", "Checks"];
    const again = (nursery: Nursery) =>
      answered(nursery, "sidebarSetUp", { tab: "New records", columns: [], methods: [] });
    const model = openNursery([smallRecords(), { ...smallRecords(), name: "New records" }], {
      newRows: 60,
    }).ready("Records");
    const start = model.saved();
    const shown = (nursery: Nursery) => live.map((name) => nursery.snapshot(name));
    const before = shown(model);
    const calls = callsToFail(model, { run: again, long: true }, kind).filter((n) => n > 60);
    const after = shown(model);
    const judge = (nursery: Nursery) => {
      const wrong: string[] = [];
      shown(nursery).forEach((one, at) => {
        const whole = one === before[at] || one === after[at];
        if (!whole && !isHalfMade(nursery, live[at] as string)) wrong.push(one);
      });
      if (!again(nursery)) wrong.push("never works again");
      else if (JSON.stringify(shown(nursery)) !== JSON.stringify(after)) wrong.push("not mended");
      return wrong;
    };
    expect(calls.length).toBeGreaterThan(20);
    expect(wrongsAfter({ start, run: again, calls, kind, judge })).toEqual({});
  },
  300_000,
);
