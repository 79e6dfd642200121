import { type CellWrite, isAlike, type WriteGroup } from "./table-write";

/** The cells of a tab, from its first on. */
export type CellValues = readonly (readonly unknown[])[];

/** Rows or columns before and after, from 1, both ways. */
export interface Moved {
  readonly to: ReadonlyMap<number, number>;
  readonly from: ReadonlyMap<number, number>;
}

export function valueAt(grid: CellValues, row: number, column: number): unknown {
  return grid[row - 1]?.[column - 1] ?? "";
}

export function columnsMoved(
  before: CellValues,
  after: CellValues,
  headerRows: readonly number[],
): Moved {
  const headers = (grid: CellValues, down: number): string[] => {
    const width = Math.max(0, ...headerRows.map((row) => grid[row + down - 1]?.length ?? 0));
    return Array.from({ length: width }, (_, at) =>
      headerRows.map((row) => String(valueAt(grid, row + down, at + 1))).join("\n"),
    );
  };
  const old = headers(before, 0);
  const known = new Set(old.filter((header) => header.trim() !== ""));
  let now = headers(after, 0);
  let most = -1;
  // Rows may have been put in or taken out above the header too.
  for (const down of shifts(headerRows, after.length)) {
    const found = headers(after, down);
    const alike = new Set(found.filter((header) => known.has(header))).size;
    if (alike > most) {
      most = alike;
      now = found;
    }
  }
  const columnsOf = new Map<string, number[]>();
  old.forEach((header, at) => {
    if (header.trim() !== "") columnsOf.set(header, [...(columnsOf.get(header) ?? []), at + 1]);
  });
  const [to, from] = [new Map<number, number>(), new Map<number, number>()];
  now.forEach((header, at) => {
    const column =
      header.trim() === "" ? nextTo(from.get(at), old) : columnsOf.get(header)?.shift();
    if (column === undefined) return;
    to.set(column, at + 1);
    from.set(at + 1, column);
  });
  return { to, from };
}

/** A column without a header is known by the one before it. */
function nextTo(column: number | undefined, headers: readonly string[]): number | undefined {
  if (column === undefined) return undefined;
  return headers[column]?.trim() === "" ? column + 1 : undefined;
}

/** How far the header may have moved, the least first. */
function shifts(headerRows: readonly number[], rows: number): number[] {
  const first = Math.min(...headerRows);
  const all = Array.from({ length: rows }, (_, at) => at + 1 - first);
  return all.sort((a, b) => Math.abs(a) - Math.abs(b));
}

export function rowsMoved(
  before: CellValues,
  after: CellValues,
  {
    group,
    columns,
    hasFewerRows,
  }: { readonly group: WriteGroup; readonly columns: Moved; readonly hasFewerRows: boolean },
): Moved {
  const written = new Map<number, CellWrite[]>();
  for (const write of group.writes) {
    written.set(write.row, [...(written.get(write.row) ?? []), write]);
  }
  const { oldKey, newKey, blank } = rowKeys({ before, after, group, columns });
  const [to, from] = [new Map<number, number>(), new Map<number, number>()];
  /** Values of a row as it stands now, by their old columns; undefined for a column that is gone. */
  const cellsNow = (row: number) => (column: number) => {
    const now = columns.to.get(column);
    return now === undefined ? undefined : valueAt(after, row, now);
  };
  const pair = (old: number, now: number) => {
    to.set(old, now);
    from.set(now, old);
  };
  const waiting = new Map<string, number[]>();
  for (let row = 1; row <= before.length; row += 1) {
    const own = oldKey(row);
    if (own !== blank && !written.has(row)) waiting.set(own, [...(waiting.get(own) ?? []), row]);
  }
  const freeNow: number[] = [];
  for (let row = 1; row <= after.length; row += 1) {
    const old = waiting.get(newKey(row))?.shift();
    if (old === undefined) freeNow.push(row);
    else pair(old, row);
  }
  const freeOld = [...waiting.values()].flat();
  const expected = (row: number) => expectedAt(row, from, after.length);

  // Rows that were not written yet, and those with something of their own beside what is written.
  const isNow = (row: number) => (one: number) =>
    !from.has(one) &&
    (newKey(one) === oldKey(row) ||
      (oldKey(row, true) !== blank && newKey(one, true) === oldKey(row, true)));
  for (const row of written.keys()) {
    const now = oldKey(row) === blank ? undefined : nearest(row, freeNow.filter(isNow(row)));
    if (now !== undefined) pair(row, now);
  }
  for (const [row, writes] of written) {
    const isFree = !from.has(row) && freeNow.includes(row);
    // Rows that are nowhere any more, of which one may have been written over.
    const gone = freeOld.filter((old) => !to.has(old) && oldKey(old, true) === newKey(row, true));
    const likely = gone.find((old) => expected(row).includes(old));
    const isOnly = gone.length === 1 && !hasFewerRows;
    const over = likely ?? (isOnly ? gone[0] : undefined);
    if (isFree && over !== undefined) pair(over, row);
    if (to.has(row)) continue;
    // All of the row is ours: it is known by what was written, or where it is blank by its neighbours.
    const now = nearest(
      row,
      freeNow.filter((one) => !from.has(one) && holdsSome(cellsNow(one), writes)),
    );
    if (now !== undefined) pair(row, now);
  }
  for (const row of written.keys()) {
    if (to.has(row)) continue;
    const now = freeNow.find(
      (one) => !from.has(one) && newKey(one) === blank && expected(one).includes(row),
    );
    if (now !== undefined) pair(row, now);
  }
  return { to, from };
}

/** Rows that should stand here, going by the nearest that are known above and below. */
function expectedAt(row: number, from: ReadonlyMap<number, number>, rows: number): number[] {
  const near = (step: 1 | -1): number[] => {
    for (let at = row + step; at >= 1 && at <= rows; at += step) {
      const old = from.get(at);
      if (old !== undefined) return [old + row - at];
    }
    return [];
  };
  return [...near(-1), ...near(1)];
}

/** Each row's cells as one text, columns in their old order; without the written ones if so wished. */
function rowKeys({
  before,
  after,
  group,
  columns,
}: {
  readonly before: CellValues;
  readonly after: CellValues;
  readonly group: WriteGroup;
  readonly columns: Moved;
}) {
  const pairs = [...columns.to];
  // Where columns have moved, others than those that were meant may have been written too.
  const masked = new Set(
    group.writes.flatMap(({ column }) => [column, columns.from.get(column) ?? column]),
  );
  const cellsOf = (without: boolean, valueIn: (old: number, now: number) => unknown) =>
    key(pairs.map(([old, now]) => (without && masked.has(old) ? "" : valueIn(old, now))));
  return {
    oldKey: (row: number, without = false) =>
      cellsOf(without, (column) => valueAt(before, row, column)),
    newKey: (row: number, without = false) =>
      cellsOf(without, (_, column) => valueAt(after, row, column)),
    blank: key(pairs.map(() => "")),
  };
}

/**
 * Whether a row holds something that was written or stood there, and nothing else.
 *
 * @param valueIn what stands in an old column now; undefined where that is gone
 */
function holdsSome(valueIn: (oldColumn: number) => unknown, writes: readonly CellWrite[]): boolean {
  const standing = writes.flatMap(({ column, before: old, after: value }) => {
    const holds = valueIn(column);
    if (holds === undefined) return [];
    const fits = isAlike(holds, value) || isAlike(holds, old);
    return [{ fits, tells: fits && holds !== "" }];
  });
  return standing.every(({ fits }) => fits) && standing.some(({ tells }) => tells);
}

function nearest(row: number, rows: readonly number[]): number | undefined {
  return [...rows].sort((a, b) => Math.abs(a - row) - Math.abs(b - row))[0];
}

function key(cells: readonly unknown[]): string {
  return JSON.stringify(cells);
}
