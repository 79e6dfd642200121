import type { Injector } from "@univerjs/core";
import { SheetsSelectionsService } from "@univerjs/sheets";
import type { OpenBook } from "../../spreadsheet-app/open-book";

/**
 * Shows the note of the selected cell in a line above the grid, or why a function of the add-in
 * failed there, which a spreadsheet shows in a note too.
 * @returns a function that ends it
 */
export function showCellNote(injector: Injector, book: OpenBook, line: HTMLElement): () => void {
  const selections = injector.get(SheetsSelectionsService);
  const show = () => {
    const cell = selections.getCurrentLastSelectionPrimaryCell();
    const sheet = book.workbook.getActiveSheet();
    const data = cell && sheet.getCellMatrix().getValue(cell.actualRow, cell.actualColumn);
    const custom = (data?.custom ?? {}) as { note?: string; message?: string };
    const text = custom.note ?? (data?.v === "#ERROR!" ? custom.message : undefined) ?? "";
    line.textContent = text;
    line.hidden = text === "";
  };
  const moved = selections.selectionMoveEnd$.subscribe(show);
  const set = selections.selectionSet$.subscribe(show);
  return () => {
    moved.unsubscribe();
    set.unsubscribe();
    line.hidden = true;
  };
}
