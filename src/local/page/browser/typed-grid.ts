import { CellValueType, type ICellData, type Injector } from "@univerjs/core";
import { AFTER_CELL_EDIT, SheetInterceptorService } from "@univerjs/sheets";
import { isTextPattern } from "../../cell-kinds";
import { cellReader } from "../../spreadsheet-app/cell-reading";
import { cellOfEntry } from "../../spreadsheet-app/cell-writing";
import { engineFormula } from "../../spreadsheet-app/formula-syntax";
import type { OpenBook } from "../../spreadsheet-app/open-book";
import { typedEntry } from "../../spreadsheet-app/typed-entry";

/** Before the engine's own reading, which knows one locale only. */
const PRIORITY = 1000;

/**
 * Reads what the person types into the grid by the workbook's locale, like what scripts write.
 * @returns a function that ends it
 */
export function readTyping(injector: Injector, book: OpenBook, locale: string): () => void {
  return injector.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: PRIORITY,
    handler(cell, { subUnitId, row, col }, next) {
      const text = plainText((cell ?? null) as ICellData | null);
      // The grid has taken the apostrophe off already.
      const isForced = cell?.t === CellValueType.FORCE_STRING;
      if (cell?.f) {
        // The engine's own spelling stays open to who edits what its formula bar shows.
        const formula = engineFormula(cell.f, locale);
        return next(formula === null ? cell : { ...cell, f: formula });
      }
      // Texts of several looks are the engine's business.
      if (text === null || (text.startsWith("=") && !isForced)) return next(cell);
      const { pattern } = cellReader(book, subUnitId)(row, col);
      const typed = isForced ? `'${text}` : text;
      const entry = typedEntry(typed, {
        locale,
        textFormat: isTextPattern(pattern),
        byScript: false,
        year: new Date().getFullYear(),
      });
      return { ...cell, ...cellOfEntry(entry, pattern) };
    },
  });
}

function plainText(cell: ICellData | null): string | null {
  if (!cell || cell.p || cell.f) return null;
  return cell.v === null || cell.v === undefined ? null : String(cell.v);
}
