import { expect, it } from "vitest";
import { dueCell, dueRow, dueRows, enterDue, setDue } from "./due-list";
import type { Nursery } from "./nursery";
import { nurseryToTick, takesWritten } from "./nursery-to-tick";

const TICKS = 20;

/** Calls that reach the workbook: not those to the lock, the clock and the maker of ids. */
function reaching({ w: { meter } }: Nursery): number {
  const elsewhere = /^(?:LockService|Lock|Utilities|Session)\./;
  return [...meter.calls].reduce(
    (sum, [name, times]) => sum + (elsewhere.test(name) ? 0 : times),
    0,
  );
}

it("writes twenty ticks that come as one event with at most 120 calls that reach the workbook", async () => {
  const { nursery } = nurseryToTick(TICKS, { apart: true });
  const boxes = dueRows(nursery, ["Task"]).map(([task]) => [
    task === "Take count" ? "TRUE" : "FALSE",
  ]);
  nursery.w.meter.reset();
  nursery.w.paste("Due list", "A3", boxes);
  await nursery.w.settled();
  expect(nursery.w.editErrors).toEqual([]);
  expect(takesWritten(nursery)).toBe(TICKS);
  console.log(`${TICKS} ticks in one event: ${reaching(nursery)} calls`);
  expect(reaching(nursery)).toBeLessThanOrEqual(120);
  expect(nursery.w.meter.calls.get("Range.getFormulas")).toBe(1);
});

it("writes twenty ticks that come one by one, with notes, with at most 40 calls each", async () => {
  const { nursery, rows } = nurseryToTick(TICKS, { apart: true });
  for (const row of rows) setDue(nursery, row, { Note: "dry" });
  const calls: number[] = [];
  for (const row of rows) {
    nursery.w.meter.reset();
    await enterDue(nursery, row, { Done: "TRUE" });
    calls.push(reaching(nursery));
  }
  expect(nursery.w.editErrors).toEqual([]);
  expect(takesWritten(nursery)).toBe(TICKS);
  console.log(`${TICKS} ticks one by one: ${calls.join(" ")} calls`);
  expect(Math.max(...calls)).toBeLessThanOrEqual(40);
  const row = dueRow(nursery, "B0");
  nursery.w.meter.reset();
  nursery.w.type("Due list", dueCell(nursery, "Done", row), "FALSE");
  await nursery.w.settled();
  expect(takesWritten(nursery)).toBe(TICKS - 1);
  console.log(`one taken back: ${reaching(nursery)} calls`);
  expect(reaching(nursery)).toBeLessThanOrEqual(60);
});

it("asks twice of an edit in another tab, and nothing more", async () => {
  const { nursery } = nurseryToTick(TICKS, { apart: true });
  nursery.w.meter.reset();
  nursery.w.type("Records", "P2", "dry");
  await nursery.w.settled();
  expect([...nursery.w.meter.calls]).toEqual([
    ["Range.offset", 1],
    ["Range.getValues", 1],
  ]);
});
