import { expect, it } from "vitest";
import { dueRows, dueValue, enterDue, setDue } from "../due-list";
import { type Nursery, openNursery, SMALL_HEADER, smallRow, tab } from "../nursery";
import { notYetText } from "../row-texts";
import { tickAtOnce } from "./two-runs";

const BATCHES = 8;

function nurseryToTick(): { nursery: Nursery; rows: number[] } {
  const records = Array.from({ length: BATCHES }, (_, at) =>
    smallRow({
      ...{ Batch: `B${at}`, Place: "Bay 1", Sown: "2026-07-20", "Seeds sown": 100 },
      ...{ "Germination day": "2026-07-30", Germinated: 90 },
      ...{ "Grafted on": "2026-10-24", "Grafts made": 80 },
    }),
  );
  const nursery = openNursery([tab("Records", [SMALL_HEADER, ...records])], {
    newRows: 80,
  }).ready();
  const rows = dueRows(nursery, ["Task"]).flatMap(([task], at) =>
    task === "Take count" ? [at + 3] : [],
  );
  expect(rows).toHaveLength(BATCHES);
  for (const row of rows) setDue(nursery, row, { Count: 60 });
  return { nursery, rows };
}

/** Cells that the log says are written, each as often as it says so. */
const loggedCells = (nursery: Nursery) =>
  nursery
    .values("Write log")
    .slice(2)
    .filter((line) => line[10] === "written")
    .map((line) => String(line[4]))
    .sort();
const filled = (nursery: Nursery) =>
  nursery
    .values("Records")
    .slice(1)
    .filter((row) => row[11] === "2026-11-25" && row[12] === 60).length;
const halves = (rows: readonly number[]) =>
  [0, 1].map((half) => rows.filter((_, at) => at % 2 === half));

it("ticks of two persons at once are each written once", async () => {
  const { nursery, rows } = nurseryToTick();
  const waits = await tickAtOnce(nursery, halves(rows), { lockWaitMs: 600_000 });
  // Else they were not at it at once.
  expect(waits).toBeGreaterThan(0);
  expect(filled(nursery)).toBe(BATCHES);
  const cells = loggedCells(nursery);
  expect(cells).toHaveLength(2 * BATCHES);
  expect(new Set(cells).size).toBe(2 * BATCHES);
  for (const row of rows) expect(dueValue(nursery, "Written", row)).toMatch(/^✓/);
  expect(nursery.w.lock.isFree()).toBe(true);
});

it("ticks that meet a lock which is held too long say that they are not yet written, until the next one", async () => {
  const { nursery, rows } = nurseryToTick();
  const [last = 0, ...others] = [...rows].reverse();
  await tickAtOnce(nursery, halves(others), { lockWaitMs: 1, isHeld: () => true });
  expect(filled(nursery)).toBe(0);
  expect(loggedCells(nursery)).toEqual([]);
  for (const row of others) {
    expect(dueValue(nursery, "Written", row)).toBe(notYetText());
  }
  await enterDue(nursery, last, { Done: "TRUE" });
  expect(filled(nursery)).toBe(BATCHES);
  expect(new Set(loggedCells(nursery)).size).toBe(2 * BATCHES);
  for (const row of rows) expect(dueValue(nursery, "Written", row)).toMatch(/^✓/);
});

it("ticks that meet a lock now and then are each written once or said not to be yet", async () => {
  const { nursery, rows } = nurseryToTick();
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
  expect(cells.length).toBe(2 * filled(nursery));
  expect(new Set(cells).size).toBe(cells.length);
  for (const row of rows) expect(dueValue(nursery, "Written", row)).toMatch(/^[✓…]/);
  nursery.w.call("writeTicked");
  expect(filled(nursery)).toBe(BATCHES);
  expect(new Set(loggedCells(nursery)).size).toBe(2 * BATCHES);
});
