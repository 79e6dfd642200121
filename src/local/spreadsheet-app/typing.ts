import { type ICellData, ICommandService } from "@univerjs/core";
import { SetRangeValuesCommand } from "@univerjs/sheets";
import { isTextPattern } from "../cell-kinds";
import type { Area } from "./area";
import { cellReader } from "./cell-reading";
import { cellOfEntry, rangeOf } from "./cell-writing";
import type { OpenBook } from "./open-book";
import { type TypingIn, typedEntry } from "./typed-entry";

/**
 * Puts texts into cells as the person at the keyboard does, so that it counts as an edit.
 * @param corner the upper left cell
 */
export function typeIn(
  book: OpenBook,
  sheetId: string,
  corner: Pick<Area, "row" | "column">,
  rows: readonly (readonly string[])[],
  typing: Omit<TypingIn, "textFormat">,
): void {
  const standing = cellReader(book, sheetId);
  const cells = rows.map((texts, row) =>
    texts.map((text, column): ICellData => {
      const { pattern } = standing(corner.row + row, corner.column + column);
      const entry = typedEntry(text, { ...typing, textFormat: isTextPattern(pattern) });
      return cellOfEntry(entry, pattern);
    }),
  );
  const area = { ...corner, rows: cells.length, columns: cells[0]?.length ?? 0 };
  book.injector.get(ICommandService).syncExecuteCommand(SetRangeValuesCommand.id, {
    unitId: book.unitId,
    subUnitId: sheetId,
    range: rangeOf(area),
    value: cells,
  });
}
