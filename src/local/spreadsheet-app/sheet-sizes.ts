import { SetColWidthCommand, SetFrozenCommand, SetRowHeightCommand } from "@univerjs/sheets";
import type { Execution } from "./execution";
import { wholeArgument } from "./grid-arguments";
import { sheetOf } from "./open-book";
import { ServiceError } from "./service-error";

/**
 * The methods of a sheet that freeze rows and columns, and set how wide and high they are.
 *
 * Longer than most: a list of methods of a few lines each.
 */
export function sizeMethods<Self>(
  run: Execution,
  sheetId: string,
  { self, mayChange }: { readonly self: () => Self; readonly mayChange: () => void },
) {
  const { book } = run;
  const tab = () => sheetOf(book, sheetId);
  const name = (method: string) => `SpreadsheetApp.Sheet.${method}`;
  const change = (commandId: string, parameters: Readonly<Record<string, unknown>>) => {
    book.execute(commandId, { subUnitId: sheetId, ...parameters });
  };
  /** Source of the sentence for rows: public projects that met it. That for columns is alike. */
  const frozen = (
    line: "rows" | "columns",
    count: number,
    part: Readonly<Record<string, number>>,
  ) => {
    const all = line === "rows" ? tab().getRowCount() : tab().getColumnCount();
    const check = () => {
      mayChange();
      if (count < all) return;
      throw new ServiceError(`You can't freeze all visible ${line} on the sheet.`);
    };
    run.refusals.attempt(check, () => {
      change(SetFrozenCommand.id, { ...tab().getFreeze(), ...part });
    });
    return self();
  };

  function setWidths(
    column: unknown,
    count: unknown,
    { width, method }: { readonly width: unknown; readonly method: string },
  ) {
    const first = wholeArgument(column, method) - 1;
    const last = first + wholeArgument(count, method) - 1;
    if (first < 0 || last < first || last >= tab().getColumnCount()) {
      throw new ServiceError("Those columns are out of bounds.");
    }
    const value = wholeArgument(width, method);
    const endRow = tab().getRowCount() - 1;
    run.refusals.attempt(mayChange, () => {
      change(SetColWidthCommand.id, {
        ranges: [{ startRow: 0, endRow, startColumn: first, endColumn: last }],
        value,
      });
    });
    return self();
  }

  return {
    setFrozenRows(count: unknown) {
      const rows = wholeArgument(count, name("setFrozenRows"));
      return frozen("rows", rows, { startRow: rows > 0 ? rows : -1, ySplit: rows });
    },
    getFrozenRows: () => Math.max(0, tab().getFreeze().ySplit ?? 0),
    setFrozenColumns(count: unknown) {
      const columns = wholeArgument(count, name("setFrozenColumns"));
      return frozen("columns", columns, {
        startColumn: columns > 0 ? columns : -1,
        xSplit: columns,
      });
    },
    getFrozenColumns: () => Math.max(0, tab().getFreeze().xSplit ?? 0),
    setColumnWidth: (column: unknown, width: unknown) =>
      setWidths(column, 1, { width, method: name("setColumnWidth") }),
    setColumnWidths: (column: unknown, count: unknown, width: unknown) =>
      setWidths(column, count, { width, method: name("setColumnWidths") }),
    getColumnWidth: (column: unknown) =>
      tab().getColumnWidth(wholeArgument(column, name("getColumnWidth")) - 1),
    setRowHeight(row: unknown, height: unknown) {
      const method = name("setRowHeight");
      const at = wholeArgument(row, method) - 1;
      const value = wholeArgument(height, method);
      if (at < 0 || at >= tab().getRowCount()) {
        throw new ServiceError("Those rows are out of bounds.");
      }
      run.refusals.attempt(mayChange, () => {
        change(SetRowHeightCommand.id, {
          ranges: [
            { startRow: at, endRow: at, startColumn: 0, endColumn: tab().getColumnCount() - 1 },
          ],
          value,
        });
      });
      return self();
    },
    getRowHeight: (row: unknown) =>
      tab().getRowHeight(wholeArgument(row, name("getRowHeight")) - 1),
  };
}
