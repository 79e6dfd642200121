import {
  SetColHiddenCommand,
  SetRowHiddenCommand,
  SetSpecificColsVisibleCommand,
  SetSpecificRowsVisibleCommand,
} from "@univerjs/sheets";
import type { Execution } from "./execution";
import { wholeArgument } from "./grid-arguments";
import { sheetOf } from "./open-book";
import { ServiceError } from "./service-error";
import { isFilteredOut } from "./tab-filter";

type Line = "rows" | "columns";

/**
 * The methods of a sheet that hide rows and columns by hand, and tell which are hidden. Values of
 * hidden cells are read and written as all others: from memory; the reference's sample that lists
 * what a filter hides reads it by `getValues`.
 */
export function hiddenLines<Self>(
  run: Execution,
  sheetId: string,
  { self, mayChange }: { readonly self: () => Self; readonly mayChange: () => void },
) {
  const tab = () => sheetOf(run.book, sheetId);
  const change = (
    [command, line, method]: readonly [string, Line, string],
    first: unknown,
    count: unknown,
  ) => {
    const name = `SpreadsheetApp.Sheet.${method}`;
    const start = wholeArgument(first, name) - 1;
    const end = start + (count === undefined ? 1 : wholeArgument(count, name)) - 1;
    const [high, wide] = [tab().getRowCount(), tab().getColumnCount()];
    if (start < 0 || end < start || end >= (line === "rows" ? high : wide)) {
      throw new ServiceError(`Those ${line} are out of bounds.`);
    }
    mayChange();
    const range =
      line === "rows"
        ? { startRow: start, endRow: end, startColumn: 0, endColumn: wide - 1 }
        : { startRow: 0, endRow: high - 1, startColumn: start, endColumn: end };
    run.book.execute(command, { subUnitId: sheetId, ranges: [range] });
    return self();
  };
  return {
    hideRows: (first: unknown, count?: unknown) =>
      change([SetRowHiddenCommand.id, "rows", "hideRows"], first, count),
    showRows: (first: unknown, count?: unknown) =>
      change([SetSpecificRowsVisibleCommand.id, "rows", "showRows"], first, count),
    hideColumns: (first: unknown, count?: unknown) =>
      change([SetColHiddenCommand.id, "columns", "hideColumns"], first, count),
    showColumns: (first: unknown, count?: unknown) =>
      change([SetSpecificColsVisibleCommand.id, "columns", "showColumns"], first, count),
    isRowHiddenByUser: (row: unknown) =>
      !tab().getRowRawVisible(wholeArgument(row, "SpreadsheetApp.Sheet.isRowHiddenByUser") - 1),
    isColumnHiddenByUser: (column: unknown) =>
      !tab().getColVisible(wholeArgument(column, "SpreadsheetApp.Sheet.isColumnHiddenByUser") - 1),
    isRowHiddenByFilter: (row: unknown) =>
      isFilteredOut(
        run,
        sheetId,
        wholeArgument(row, "SpreadsheetApp.Sheet.isRowHiddenByFilter") - 1,
      ),
  };
}
