import { type ICellData, ICommandService } from "@univerjs/core";
import { SetRangeValuesCommand } from "@univerjs/sheets";
import { isTextPattern } from "../cell-kinds";
import { type Area, a1Of } from "./area";
import { cellReader } from "./cell-reading";
import { type CellChanges, cellOfEntry, rangeOf } from "./cell-writing";
import { refuseInvalid } from "./data-validation";
import type { OpenBook } from "./open-book";
import { refuseProtected } from "./refused-writes";
import { type TypingIn, typedEntry } from "./typed-entry";

/**
 * Puts texts into cells as the person at the keyboard does, so that it counts as an edit.
 * @param corner the upper left cell
 * @throws ServiceError when cells are protected or refuse it
 */
export function typeIn(
  book: OpenBook,
  sheetId: string,
  {
    corner,
    rows,
    typing,
  }: {
    readonly corner: Pick<Area, "row" | "column">;
    readonly rows: readonly (readonly string[])[];
    readonly typing: Pick<TypingIn, "locale" | "year">;
  },
): void {
  const standing = cellReader(book, sheetId);
  const cells = rows.map((texts, row) =>
    texts.map((text, column): ICellData => {
      const { pattern } = standing(corner.row + row, corner.column + column);
      const entry = typedEntry(text, {
        ...typing,
        textFormat: isTextPattern(pattern),
        byScript: false,
      });
      return cellOfEntry(entry, pattern);
    }),
  );
  const area = { ...corner, rows: cells.length, columns: cells[0]?.length ?? 0 };
  // A dialog says so to a person, and nothing is written.
  refuseProtected(book, sheetId, area);
  refuseInvalid(book, {
    sheetId,
    area,
    changes: changesOf(area, cells),
    nameOf: (row, column) => a1Of({ row, column, rows: 1, columns: 1 }),
  });
  book.injector.get(ICommandService).syncExecuteCommand(SetRangeValuesCommand.id, {
    unitId: book.unitId,
    subUnitId: sheetId,
    range: rangeOf(area),
    value: cells,
  });
}

function changesOf({ row, column }: Area, cells: readonly (readonly ICellData[])[]): CellChanges {
  return Object.fromEntries(
    cells.map((line, down) => [
      row + down,
      Object.fromEntries(line.map((cell, right) => [column + right, cell])),
    ]),
  );
}
