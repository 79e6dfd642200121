import { expect } from "vitest";
import { dueRows, setDue } from "./due-list";
import { GRAFTED, type Nursery, openNursery, SMALL_HEADER, smallRow, tab } from "./nursery";

/**
 * So many batches whose takes are due and counted in the list, and nothing ticked yet.
 *
 * @param apart one between each two that is not due, so that no two cells are neighbours
 * @returns the rows of their tasks in the due list
 */
export function nurseryToTick(
  batches: number,
  { apart = false, newRows }: { readonly apart?: boolean; readonly newRows?: number } = {},
): { nursery: Nursery; rows: number[] } {
  const counted = { "Take count day": "2026-11-20", Takes: 70 };
  const records = Array.from({ length: apart ? 2 * batches : batches }, (_, at) =>
    smallRow({ Batch: `B${at}`, ...GRAFTED, ...(apart && at % 2 === 1 ? counted : {}) }),
  );
  const nursery = openNursery(
    [tab("Records", [SMALL_HEADER, ...records])],
    newRows === undefined ? {} : { newRows },
  ).ready();
  const rows = dueRows(nursery, ["Task"]).flatMap(([task], at) =>
    task === "Take count" ? [at + 3] : [],
  );
  expect(rows).toHaveLength(batches);
  for (const row of rows) setDue(nursery, row, { Count: 60 });
  return { nursery, rows };
}

/** How many takes stand in the records as the list's count of 60 on the day itself. */
export const takesWritten = (nursery: Nursery) =>
  nursery
    .values("Records")
    .slice(1)
    .filter((row) => row[11] === "2026-11-25" && row[12] === 60).length;
