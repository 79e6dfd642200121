import { expect, it } from "vitest";
import { dueValue, enterDue } from "../due-list";
import type { Nursery } from "../nursery";
import { nurseryToTick, takesWritten } from "../nursery-to-tick";
import { notYetText } from "../row-texts";
import { tickAtOnce } from "./two-runs";

const BATCHES = 8;

/** Cells that the log says are written, each as often as it says so. */
const loggedCells = (nursery: Nursery) =>
  nursery
    .values("Write log")
    .slice(2)
    .filter((line) => line[10] === "written")
    .map((line) => String(line[4]))
    .sort();
const halves = (rows: readonly number[]) =>
  [0, 1].map((half) => rows.filter((_, at) => at % 2 === half));

it("ticks of two persons at once are each written once", async () => {
  const { nursery, rows } = nurseryToTick(BATCHES, { newRows: 80 });
  const waits = await tickAtOnce(nursery, halves(rows), { lockWaitMs: 600_000 });
  // Else they were not at it at once.
  expect(waits).toBeGreaterThan(0);
  expect(takesWritten(nursery)).toBe(BATCHES);
  const cells = loggedCells(nursery);
  expect(cells).toHaveLength(2 * BATCHES);
  expect(new Set(cells).size).toBe(2 * BATCHES);
  for (const row of rows) expect(dueValue(nursery, "Written", row)).toMatch(/^✓/);
  expect(nursery.w.lock.isFree()).toBe(true);
});

it("ticks that meet a lock which is held too long say that they are not yet written, until the next one", async () => {
  const { nursery, rows } = nurseryToTick(BATCHES, { newRows: 80 });
  const [last = 0, ...others] = [...rows].reverse();
  await tickAtOnce(nursery, halves(others), { lockWaitMs: 1, isHeld: () => true });
  expect(takesWritten(nursery)).toBe(0);
  expect(loggedCells(nursery)).toEqual([]);
  for (const row of others) {
    expect(dueValue(nursery, "Written", row)).toBe(notYetText());
  }
  await enterDue(nursery, last, { Done: "TRUE" });
  expect(takesWritten(nursery)).toBe(BATCHES);
  expect(new Set(loggedCells(nursery)).size).toBe(2 * BATCHES);
  for (const row of rows) expect(dueValue(nursery, "Written", row)).toMatch(/^✓/);
});

it("ticks that meet a lock now and then are each written once or said not to be yet", async () => {
  const { nursery, rows } = nurseryToTick(BATCHES, { newRows: 80 });
  let asked = 0;
  // Held for every other look at it.
  await tickAtOnce(nursery, halves(rows), {
    lockWaitMs: 1,
    isHeld: () => {
      asked += 1;
      return asked % 3 !== 0;
    },
  });
  const cells = loggedCells(nursery);
  expect(cells.length).toBe(2 * takesWritten(nursery));
  expect(new Set(cells).size).toBe(cells.length);
  for (const row of rows) expect(dueValue(nursery, "Written", row)).toMatch(/^[✓…]/);
  nursery.w.call("writeTicked");
  expect(takesWritten(nursery)).toBe(BATCHES);
  expect(new Set(loggedCells(nursery)).size).toBe(2 * BATCHES);
});
