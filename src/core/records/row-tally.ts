import { type Grid, isBlank } from "../cells";
import type { TableArea } from "./find-tables";
import type { RowTally } from "./records";

/** What a row was used for; of two tables side by side the greater use counts. */
export const ROW_KIND = { untouched: 0, heading: 1, notBatch: 2, leftOut: 3, used: 4 } as const;

type RowKind = (typeof ROW_KIND)[keyof typeof ROW_KIND];

export interface TallyingRows {
  /** @param row from 0 */
  mark(row: number, kind: RowKind): void;
  /** Rows below the first header that hold something, all of it outside the tables; from 0. */
  outside(grid: Grid, areas: readonly TableArea[]): number[];
  count(grid: Grid, areas: readonly TableArea[]): RowTally;
}

/** Keeps account of every row of a range, so that none is lost in silence. */
export function rowTally(rowCount: number): TallyingRows {
  const kinds = new Uint8Array(rowCount);
  return {
    mark: (row, kind) => {
      if (kind > (kinds[row] as number)) kinds[row] = kind;
    },
    outside: (grid, areas) => {
      const top = Math.min(...areas.map(({ header }) => header.row));
      const rows: number[] = [];
      for (let row = top; row < rowCount; row += 1) {
        if (kinds[row] === ROW_KIND.untouched && !isBlankRow(grid, row)) rows.push(row);
      }
      return rows;
    },
    count: (grid, areas) => {
      const top = Math.min(...areas.map(({ header }) => header.row));
      const tally = {
        heading: 0,
        used: 0,
        leftOut: 0,
        notBatches: 0,
        blank: 0,
      };
      for (let row = 0; row < rowCount; row += 1) {
        const kind = kinds[row];
        if (kind === ROW_KIND.used) tally.used += 1;
        else if (kind === ROW_KIND.leftOut) tally.leftOut += 1;
        else if (kind === ROW_KIND.notBatch) tally.notBatches += 1;
        else if (kind === ROW_KIND.heading || row < top) tally.heading += 1;
        else if (isBlankRow(grid, row)) tally.blank += 1;
        else throw new Error(`row ${row + 1} was neither used nor listed`);
      }
      return tally;
    },
  };
}

function isBlankRow(grid: Grid, row: number): boolean {
  for (let column = 0; column < grid.columnCount; column += 1) {
    if (!isBlank(grid.at(row, column))) return false;
  }
  return true;
}
