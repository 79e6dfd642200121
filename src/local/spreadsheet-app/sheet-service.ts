/*
 * Longer than most: one object of the platform, with a short method for each of its own; what takes more
 * than a few lines stands in files beside.
 */
import { Direction, RANGE_TYPE } from "@univerjs/core";
import {
  InsertColByRangeCommand,
  InsertRowByRangeCommand,
  MoveColsCommand,
  MoveRowsCommand,
  RemoveColByRangeCommand,
  RemoveRowByRangeCommand,
  SetColWidthCommand,
  SetFrozenCommand,
  SetRowHeightCommand,
  SetTabColorCommand,
  SetWorksheetNameCommand,
} from "@univerjs/sheets";
import { type Area, areaOfA1 } from "./area";
import { filledSize } from "./cell-reading";
import { clearArea } from "./cell-writing";
import { type Execution, type ServiceObject, serviceObject } from "./execution";
import { textArgument, wholeArgument } from "./grid-arguments";
import { hiddenLines } from "./hidden-lines";
import { sheetOf } from "./open-book";
import { checkedArea } from "./range-bounds";
import { areaBehind, rangeService, select } from "./range-service";
import { attemptOn, writeValues } from "./range-values";
import { refuseProtected } from "./refused-writes";
import { ServiceError, signatureError } from "./service-error";
import { sortRows } from "./sorted-rows";
import { filterOf } from "./tab-filter";
import { rulesOf } from "./tab-rules";
import { hideTab, isTabHidden, refuseTakenName, showTab } from "./tabs";

/** The kinds of tabs, as `getType` tells them. Source: the reference page of SheetType. */
export const SheetType = Object.freeze({
  GRID: "GRID",
  OBJECT: "OBJECT",
  DATASOURCE: "DATASOURCE",
});

/** What a tab without cells can do as well. From memory, but for `getType` and `getName`. */
const WITHOUT_CELLS = new Set([
  "getType",
  "getName",
  "setName",
  "getSheetId",
  "getIndex",
  "activate",
  "hideSheet",
  "showSheet",
  "isSheetHidden",
  "setTabColor",
]);

/**
 * Source of the sentence: diegomanuel/binance-to-google-sheets#13, and public projects that met it
 * at `getDataRange` and `getLastRow`.
 * @throws ServiceError when the tab holds no cells
 */
export function refuseWithoutCells(run: Execution, sheetId: string): void {
  const { kind } = rulesOf(sheetOf(run.book, sheetId));
  if (kind === "GRID") return;
  throw new ServiceError(`The action is not supported for ${kind} sheet.`);
}

/** The tabs behind the sheets that scripts hold. */
const sheetIds = new WeakMap<object, string>();

/** The tab behind a sheet that a script hands over. @throws ServiceError when it is none */
export function sheetIdOf(sheet: unknown, method: string): string {
  const id = typeof sheet === "object" && sheet ? sheetIds.get(sheet) : undefined;
  if (id === undefined) throw signatureError([sheet], method);
  return id;
}

/** Sheet of the spreadsheet service. */
export function sheetService(run: Execution, sheetId: string): ServiceObject {
  const { book } = run;
  const tab = () => sheetOf(book, sheetId);
  const name = (method: string) => `SpreadsheetApp.Sheet.${method}`;
  const whole = () => ({
    row: 0,
    column: 0,
    rows: tab().getRowCount(),
    columns: tab().getColumnCount(),
  });
  const change = (commandId: string, parameters: Readonly<Record<string, unknown>>) => {
    book.execute(commandId, { subUnitId: sheetId, ...parameters });
    return sheet;
  };
  /**
   * The engine shifts the references of the tab in front, whichever tab rows or columns are put in or
   * out of: so that one is in front meanwhile.
   */
  const reshape = (commandId: string, parameters: Readonly<Record<string, unknown>>) => {
    const front = book.workbook.getActiveSheet().getSheetId();
    if (front === sheetId) return change(commandId, parameters);
    book.show(sheetId);
    try {
      return change(commandId, parameters);
    } finally {
      book.show(front);
    }
  };
  /** Rows counted from 0 and over the whole width, as the engine names them. */
  const rowBlock = (first: number, count: number) => ({
    startRow: first,
    endRow: first + count - 1,
    startColumn: 0,
    endColumn: tab().getColumnCount() - 1,
  });
  /** The same of columns. */
  const columnBlock = (first: number, count: number) => ({
    startRow: 0,
    endRow: tab().getRowCount() - 1,
    startColumn: first,
    endColumn: first + count - 1,
  });
  const insertRows = (after: number, count: number) => {
    // From memory: the wording for rows that are not there.
    if (after < 1 || after > tab().getRowCount() || count < 1) {
      throw new ServiceError("Those rows are out of bounds.");
    }
    mayChange();
    return reshape(InsertRowByRangeCommand.id, {
      direction: Direction.DOWN,
      range: rowBlock(after, count),
    });
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
    return sheet;
  };

  /** What belongs to the tab as a whole is refused at once. From memory. */
  const mayChange = (area: Area | null = null) => {
    if (!run.isOwner) refuseProtected(book, sheetId, area);
  };
  const rowsArea = (first: number, count: number): Area => ({
    ...whole(),
    row: first,
    rows: count,
  });

  const methods: Readonly<Record<string, (...parameters: never[]) => unknown>> = {
    getType: () => SheetType[rulesOf(tab()).kind],
    getName: () => tab().getName(),
    setName(text: unknown) {
      const wanted = textArgument(text, name("setName"));
      mayChange();
      if (wanted !== tab().getName()) refuseTakenName(book, wanted, sheetId);
      return change(SetWorksheetNameCommand.id, { name: wanted });
    },
    getSheetId: () => book.numberOf(tab().getSheetId()),
    getIndex: () => book.workbook.getSheetIndex(tab()) + 1,
    getRange(first: unknown, column?: unknown, rows?: unknown, columns?: unknown) {
      if (typeof first === "string") {
        const area = areaOfA1(first, whole());
        if (!area) throw new ServiceError("Range not found");
        return rangeService(run, { sheetId, area: checkedArea(run, sheetId, area) });
      }
      const method = name("getRange");
      const area = {
        row: wholeArgument(first, method) - 1,
        column: wholeArgument(column, method) - 1,
        rows: rows === undefined ? 1 : wholeArgument(rows, method),
        columns: columns === undefined ? 1 : wholeArgument(columns, method),
      };
      return rangeService(run, { sheetId, area: checkedArea(run, sheetId, area) });
    },
    getDataRange() {
      const filled = filledSize(book, sheetId);
      const area = { rows: Math.max(1, filled.rows), columns: Math.max(1, filled.columns) };
      return rangeService(run, { sheetId, area: { row: 0, column: 0, ...area } });
    },
    getLastRow: () => filledSize(book, sheetId).rows,
    getLastColumn: () => filledSize(book, sheetId).columns,
    getMaxRows: () => tab().getRowCount(),
    getMaxColumns: () => tab().getColumnCount(),
    insertRowsAfter: (after: unknown, count: unknown) =>
      insertRows(
        wholeArgument(after, name("insertRowsAfter")),
        wholeArgument(count, name("insertRowsAfter")),
      ),
    insertRowsBefore(before: unknown, count: unknown) {
      const top = wholeArgument(before, name("insertRowsBefore"));
      const high = wholeArgument(count, name("insertRowsBefore"));
      if (top < 1 || top > tab().getRowCount() || high < 1) {
        throw new ServiceError("Those rows are out of bounds.");
      }
      mayChange();
      return reshape(InsertRowByRangeCommand.id, {
        direction: Direction.UP,
        range: rowBlock(top - 1, high),
      });
    },
    insertColumnsBefore(before: unknown, count: unknown) {
      const left = wholeArgument(before, name("insertColumnsBefore"));
      const wide = wholeArgument(count, name("insertColumnsBefore"));
      if (left < 1 || left > tab().getColumnCount() || wide < 1) {
        throw new ServiceError("Those columns are out of bounds.");
      }
      mayChange();
      return reshape(InsertColByRangeCommand.id, {
        direction: Direction.LEFT,
        range: columnBlock(left - 1, wide),
      });
    },
    /** Source: reference page of Sheet.moveColumns; indexes are those before the move. */
    moveColumns(columns: unknown, destination: unknown) {
      const method = name("moveColumns");
      const { column, columns: wide } = areaBehind(columns, method);
      const to = wholeArgument(destination, method) - 1;
      if (to < 0 || to > tab().getColumnCount()) {
        throw new ServiceError("Those columns are out of bounds.");
      }
      // Onto or right behind themselves they stay where they are.
      if (to >= column && to <= column + wide) return sheet;
      mayChange();
      return reshape(MoveColsCommand.id, {
        range: { ...columnBlock(column, wide), rangeType: RANGE_TYPE.COLUMN },
        fromRange: { ...columnBlock(column, wide), rangeType: RANGE_TYPE.COLUMN },
        toRange: { ...columnBlock(to, wide), rangeType: RANGE_TYPE.COLUMN },
      });
    },
    insertColumnsAfter(after: unknown, count: unknown) {
      const left = wholeArgument(after, name("insertColumnsAfter"));
      const wide = wholeArgument(count, name("insertColumnsAfter"));
      if (left < 1 || left > tab().getColumnCount() || wide < 1) {
        throw new ServiceError("Those columns are out of bounds.");
      }
      mayChange();
      return reshape(InsertColByRangeCommand.id, {
        direction: Direction.RIGHT,
        range: {
          startRow: 0,
          endRow: tab().getRowCount() - 1,
          startColumn: left,
          endColumn: left + wide - 1,
        },
      });
    },
    /** Source: reference page of Sheet.moveRows; places are those before the move. */
    moveRows(rows: unknown, destination: unknown) {
      const method = name("moveRows");
      const { row, rows: high } = areaBehind(rows, method);
      const to = wholeArgument(destination, method) - 1;
      if (to < 0 || to > tab().getRowCount()) {
        throw new ServiceError("Those rows are out of bounds.");
      }
      if (to >= row && to <= row + high) return sheet;
      mayChange();
      const block = { ...rowBlock(row, high), rangeType: RANGE_TYPE.ROW };
      return reshape(MoveRowsCommand.id, {
        range: block,
        fromRange: block,
        toRange: { ...rowBlock(to, high), rangeType: RANGE_TYPE.ROW },
      });
    },
    /** Frozen rows stay where they are: from memory. */
    sort(column: unknown, ascending?: unknown) {
      const method = name("sort");
      const at = wholeArgument(column, method) - 1;
      const above = Math.max(0, tab().getFreeze().ySplit ?? 0);
      const area = { ...whole(), row: above, rows: filledSize(book, sheetId).rows - above };
      if (area.rows < 1) return sheet;
      const by = [{ column: at, ascending: ascending !== false }];
      attemptOn(run, { sheetId, area, write: () => sortRows(book, { sheetId, area, by }) });
      return sheet;
    },
    getFilter: () => filterOf(run, sheetId),
    ...hiddenLines(run, sheetId, { self: () => sheet, mayChange }),
    deleteRows(first: unknown, count: unknown) {
      const top = wholeArgument(first, name("deleteRows"));
      const high = wholeArgument(count, name("deleteRows"));
      if (top < 1 || high < 1 || top + high - 1 > tab().getRowCount()) {
        throw new ServiceError("Those rows are out of bounds.");
      }
      if (high === tab().getRowCount()) {
        throw new ServiceError("You can't delete all the rows on the sheet.");
      }
      // Source of the sentence: public projects that met it.
      const frozenRows = Math.max(0, tab().getFreeze().ySplit ?? 0);
      const frozenLeft = frozenRows - Math.max(0, Math.min(frozenRows, top + high - 1) - top + 1);
      if (tab().getRowCount() - high <= frozenLeft) {
        throw new ServiceError("Sorry, it is not possible to delete all non-frozen rows.");
      }
      mayChange(rowsArea(top - 1, high));
      return reshape(RemoveRowByRangeCommand.id, { range: rowBlock(top - 1, high) });
    },
    deleteColumns(first: unknown, count: unknown) {
      const left = wholeArgument(first, name("deleteColumns"));
      const wide = wholeArgument(count, name("deleteColumns"));
      if (left < 1 || wide < 1 || left + wide - 1 > tab().getColumnCount()) {
        throw new ServiceError("Those columns are out of bounds.");
      }
      if (wide === tab().getColumnCount()) {
        throw new ServiceError("You can't delete all the columns on the sheet.");
      }
      const area = { ...whole(), column: left - 1, columns: wide };
      mayChange(area);
      return reshape(RemoveColByRangeCommand.id, { range: columnBlock(left - 1, wide) });
    },
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
        change(SetRowHeightCommand.id, { ranges: [rowBlock(at, 1)], value });
      });
      return sheet;
    },
    getRowHeight: (row: unknown) =>
      tab().getRowHeight(wholeArgument(row, name("getRowHeight")) - 1),
    hideSheet() {
      mayChange();
      hideTab(book, sheetId);
      return sheet;
    },
    showSheet() {
      mayChange();
      showTab(book, sheetId);
      return sheet;
    },
    isSheetHidden: () => isTabHidden(tab()),
    appendRow(values: unknown) {
      const method = name("appendRow");
      if (!Array.isArray(values) || values.length === 0) throw signatureError([values], method);
      const row = filledSize(book, sheetId).rows;
      if (row >= tab().getRowCount()) insertRows(tab().getRowCount(), 1);
      const area = { row, column: 0, rows: 1, columns: values.length };
      const inside = checkedArea(run, sheetId, area);
      writeValues(run, { sheetId, area: inside, valueAt: (_, column) => values[column], method });
      return sheet;
    },
    activate() {
      select(run, sheetId, { row: 0, column: 0, rows: 1, columns: 1 });
      return sheet;
    },
    clear() {
      attemptOn(run, {
        sheetId,
        area: whole(),
        write: () => {
          clearArea(book, { sheetId, area: whole(), keeping: { formats: true } });
        },
      });
      return sheet;
    },
    clearContents() {
      attemptOn(run, {
        sheetId,
        area: whole(),
        write: () => {
          clearArea(book, { sheetId, area: whole(), keeping: { formats: false } });
        },
      });
      return sheet;
    },
    setTabColor(color: unknown) {
      const value = color === null ? "" : textArgument(color, name("setTabColor"));
      mayChange();
      return change(SetTabColorCommand.id, { value });
    },
  };
  const sheet: ServiceObject = serviceObject(run, "Sheet", {
    methods,
    properties: {},
    refuse: (method) => {
      if (!WITHOUT_CELLS.has(method)) refuseWithoutCells(run, sheetId);
    },
  });
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
    return sheet;
  }
  sheetIds.set(sheet, sheetId);
  return sheet;
}
