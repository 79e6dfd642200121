/** Adds up the counts of a table row by row, to know a row of sums by its numbers. */
export interface RunningSums {
  add(counts: readonly (number | null)[]): void;
  /**
   * Whether counts are the sums of the rows since the last sums, or of all rows so far.
   * A single number proves nothing unless several rows went into it.
   */
  matches(counts: readonly (number | null)[]): boolean;
  /** Starts over after a row of sums. */
  reset(): void;
  /** Starts over below a header, too. */
  newTable(): void;
}

export function runningSums(columns: number): RunningSums {
  const all = new Array<number>(columns).fill(0);
  let part = new Array<number>(columns).fill(0);
  let table = new Array<number>(columns).fill(0);
  let rowsInPart = 0;
  let rowsInTable = 0;
  let rows = 0;
  const equal = (counts: readonly (number | null)[], sums: readonly number[]) =>
    counts.every((count, column) => count === null || count === sums[column]);
  return {
    add: (counts) => {
      rows += 1;
      rowsInPart += 1;
      rowsInTable += 1;
      for (let column = 0; column < columns; column += 1) {
        const count = counts[column] ?? 0;
        all[column] = (all[column] as number) + count;
        part[column] = (part[column] as number) + count;
        table[column] = (table[column] as number) + count;
      }
    },
    matches: (counts) => {
      const told = counts.filter((count) => count !== null && count > 0).length;
      if (told === 0) return false;
      return (
        (rowsInPart >= 2 && equal(counts, part)) ||
        (rowsInTable >= 2 && equal(counts, table)) ||
        (rows >= 2 && equal(counts, all))
      );
    },
    newTable: () => {
      table = new Array<number>(columns).fill(0);
      rowsInTable = 0;
    },
    reset: () => {
      part = new Array<number>(columns).fill(0);
      rowsInPart = 0;
    },
  };
}
