import { SetTabColorCommand, SetWorksheetNameCommand } from "@univerjs/sheets";
import { type Area, areaOfA1 } from "./area";
import { filledSize } from "./cell-reading";
import { type Execution, type ServiceObject, serviceObject } from "./execution";
import { textArgument, wholeArgument } from "./grid-arguments";
import { hiddenLines } from "./hidden-lines";
import { sheetOf } from "./open-book";
import { checkedArea } from "./range-bounds";
import { rangeService, select } from "./range-service";
import { attemptOn, attemptToClear, writeValues } from "./range-values";
import { refuseProtected } from "./refused-writes";
import { ServiceError, signatureError } from "./service-error";
import { lineMethods } from "./sheet-lines";
import { sizeMethods } from "./sheet-sizes";
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

/**
 * Sheet of the spreadsheet service.
 *
 * Longer than most: one object of the platform, with a short method for each of its own; what takes more
 * than a few lines stands in files beside.
 */
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
  /** What belongs to the tab as a whole is refused at once. From memory. */
  const mayChange = (area: Area | null = null) => {
    if (!run.isOwner) refuseProtected(book, sheetId, area);
  };
  const lines = lineMethods(run, sheetId, { self: () => sheet, mayChange });

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
    ...lines,
    ...sizeMethods(run, sheetId, { self: () => sheet, mayChange }),
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
      if (row >= tab().getRowCount()) lines.insertRowsAfter(tab().getRowCount(), 1);
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
      attemptToClear(run, { sheetId, area: whole(), formatsToo: true });
      return sheet;
    },
    clearContents() {
      attemptToClear(run, { sheetId, area: whole(), formatsToo: false });
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
  sheetIds.set(sheet, sheetId);
  return sheet;
}
