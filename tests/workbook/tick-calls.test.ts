import { expect, it } from "vitest";
import { dueCell, dueRow, dueRows, enterDue, setDue } from "./due-list";
import { type Nursery, openNursery, SMALL_HEADER, smallRow, tab } from "./nursery";

const TICKS = 20;

/** Calls that reach the workbook: not those to the lock, the clock and the maker of ids. */
function reaching({ w: { meter } }: Nursery): number {
  const elsewhere = /^(?:LockService|Lock|Utilities|Session)\./;
  return [...meter.calls].reduce(
    (sum, [name, times]) => sum + (elsewhere.test(name) ? 0 : times),
    0,
  );
}

/** Batches whose takes are due, each with one between that is not, so that no two cells are neighbours. */
function nurseryToTick(): { nursery: Nursery; rows: number[] } {
  const records = Array.from({ length: 2 * TICKS }, (_, at) =>
    smallRow({
      Batch: `B${at}`,
      Place: "Bay 1",
      Sown: "2026-07-20",
      "Seeds sown": 100,
      "Germination day": "2026-07-30",
      Germinated: 90,
      "Grafted on": "2026-10-24",
      "Grafts made": 80,
      ...(at % 2 === 0 ? {} : { "Take count day": "2026-11-20", Takes: 70 }),
    }),
  );
  const nursery = openNursery([tab("Records", [SMALL_HEADER, ...records])]).ready();
  const rows = dueRows(nursery, ["Task", "Batch"]).flatMap(([task], at) =>
    task === "Take count" ? [at + 3] : [],
  );
  expect(rows).toHaveLength(TICKS);
  for (const row of rows) setDue(nursery, row, { Count: 60 });
  return { nursery, rows };
}

const written = (nursery: Nursery) =>
  nursery
    .values("Records")
    .slice(1)
    .filter((row) => row[11] === "2026-11-25" && row[12] === 60).length;

it("writes twenty ticks that come as one event with at most 120 calls that reach the workbook", async () => {
  const { nursery } = nurseryToTick();
  const boxes = dueRows(nursery, ["Task"]).map(([task]) => [
    task === "Take count" ? "TRUE" : "FALSE",
  ]);
  nursery.w.meter.reset();
  nursery.w.paste("Due list", "A3", boxes);
  await nursery.w.settled();
  expect(nursery.w.editErrors).toEqual([]);
  expect(written(nursery)).toBe(TICKS);
  console.log(`${TICKS} ticks in one event: ${reaching(nursery)} calls`);
  expect(reaching(nursery)).toBeLessThanOrEqual(120);
  expect(nursery.w.meter.calls.get("Range.getFormulas")).toBe(1);
});

it("writes twenty ticks that come one by one, with notes, with at most 40 calls each", async () => {
  const { nursery, rows } = nurseryToTick();
  for (const row of rows) setDue(nursery, row, { Note: "dry" });
  const calls: number[] = [];
  for (const row of rows) {
    nursery.w.meter.reset();
    await enterDue(nursery, row, { Done: "TRUE" });
    calls.push(reaching(nursery));
  }
  expect(nursery.w.editErrors).toEqual([]);
  expect(written(nursery)).toBe(TICKS);
  console.log(`${TICKS} ticks one by one: ${calls.join(" ")} calls`);
  expect(Math.max(...calls)).toBeLessThanOrEqual(40);
  const row = dueRow(nursery, "B0");
  nursery.w.meter.reset();
  nursery.w.type("Due list", dueCell(nursery, "Done", row), "FALSE");
  await nursery.w.settled();
  expect(written(nursery)).toBe(TICKS - 1);
  console.log(`one taken back: ${reaching(nursery)} calls`);
  expect(reaching(nursery)).toBeLessThanOrEqual(60);
});

it("asks twice of an edit in another tab, and nothing more", async () => {
  const { nursery } = nurseryToTick();
  nursery.w.meter.reset();
  nursery.w.type("Records", "P2", "dry");
  await nursery.w.settled();
  expect([...nursery.w.meter.calls]).toEqual([
    ["Range.offset", 1],
    ["Range.getValues", 1],
  ]);
});
