import { AddWorksheetMergeMutation } from "@univerjs/sheets";
import { type Area, a1Of, areaOfA1, columnNumber } from "./area";
import { rangeOf } from "./cell-writing";
import { setInputRule } from "./data-validation";
import type { OpenBook } from "./open-book";
import { type ColumnType, changeRules, rulesOf, type SheetKind } from "./tab-rules";
import { insertTab } from "./tabs";

/** What people do to their workbooks and a script must live with; for tests. */
export interface Conditions {
  /** Gives the workbook another locale, such as "pt_BR". Formulas stay what they are. */
  locale(locale: string): void;
  /** Adds a tab without cells at the end: a chart on its own, or a connected source. */
  tabWithoutCells(name: string, kind?: "OBJECT" | "DATASOURCE"): void;
  /** Makes a tab, or cells such as "L2:L9" or "L:L", untouchable for whoever runs the script. */
  protect(tab: string, cells?: string): void;
  /** Cells that refuse all but numbers, days, or the texts of a list ("reject input"). */
  reject(tab: string, cells: string, allBut: "number" | "day" | readonly string[]): void;
  /** Merges cells; those but the first are covered. What they hold is left as it is. */
  merge(tab: string, cells: string): void;
  /**
   * Makes cells with a header row a structured table.
   * @param types of typed columns, by the tab's column letters, as in { C: "day" }
   * @param joins whether a line that is written right below becomes part of it; not unless asked
   */
  table(
    tab: string,
    cells: string,
    more?: { readonly types?: Readonly<Record<string, ColumnType>>; readonly joins?: boolean },
  ): void;
  /** Where the tables of a tab are now, such as ["A1:F20"]. */
  tables(tab: string): string[];
}

/** Open ends reach past every row and column that may be added: the limits of a spreadsheet. */
const ENDLESS = { rows: 10_000_000, columns: 18_278 };

/** What people do to an open workbook, done to this one. @throws Error, at each, where there is no such tab or cell */
export function conditions(book: OpenBook, settings: { locale: string }): Conditions {
  const cellsOf = (tab: string, cells: string) => {
    const sheet = book.workbook.getSheetBySheetName(tab);
    const area: Area | null = areaOfA1(cells, ENDLESS);
    if (!sheet || !area) throw new Error(`There are no cells ${cells} in a tab ${tab}`);
    return { sheet, sheetId: sheet.getSheetId(), area };
  };
  return {
    locale(locale) {
      settings.locale = locale;
    },
    tabWithoutCells(name, kind: SheetKind = "OBJECT") {
      const front = book.workbook.getActiveSheet().getSheetId();
      const id = insertTab(book, { name, index: book.workbook.getSheets().length, rowCount: 1 });
      const sheet = book.workbook.getSheetBySheetId(id);
      if (sheet) changeRules(sheet, { kind });
      book.show(front);
    },
    protect(tab, cells) {
      const { sheet, area } = cellsOf(tab, cells ?? "A1");
      if (cells === undefined) changeRules(sheet, { isProtected: true });
      else changeRules(sheet, { protectedAreas: [...rulesOf(sheet).protectedAreas, area] });
    },
    reject(tab, cells, allBut) {
      const { sheet, sheetId, area } = cellsOf(tab, cells);
      const within = {
        ...area,
        rows: Math.min(area.rows, sheet.getRowCount() - area.row),
        columns: Math.min(area.columns, sheet.getColumnCount() - area.column),
      };
      setInputRule(book, {
        sheetId,
        area: within,
        rule:
          typeof allBut === "string"
            ? { kind: allBut, values: [], allowInvalid: false }
            : { kind: "list", values: allBut, allowInvalid: false },
      });
    },
    merge(tab, cells) {
      const { sheetId, area } = cellsOf(tab, cells);
      book.execute(AddWorksheetMergeMutation.id, { subUnitId: sheetId, ranges: [rangeOf(area)] });
    },
    table(tab, cells, { types = {}, joins = false } = {}) {
      const { sheet, area } = cellsOf(tab, cells);
      const byNumber = Object.fromEntries(
        Object.entries(types).map(([letters, type]) => [columnNumber(letters), type]),
      );
      const made = { ...area, types: byNumber, joins };
      changeRules(sheet, { tables: [...rulesOf(sheet).tables, made] });
    },
    tables: (tab) =>
      rulesOf(cellsOf(tab, "A1").sheet).tables.map(({ row, column, rows, columns }) =>
        a1Of({ row, column, rows, columns }),
      ),
  };
}
