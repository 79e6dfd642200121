import { SheetsSelectionsService } from "@univerjs/sheets";
import { type Area, areaOfA1, splitReference } from "./area";
import { type Execution, type ServiceObject, serviceObject } from "./execution";
import { textArgument, wholeArgument } from "./grid-arguments";
import { checkedArea } from "./range-bounds";
import { rangeService, select } from "./range-service";
import { refuseDeletion } from "./refused-writes";
import { ServiceError } from "./service-error";
import { refuseWithoutCells, sheetIdOf, sheetService } from "./sheet-service";
import { rulesOf } from "./tab-rules";
import { deleteTab, freeTabName, insertTab, moveTab } from "./tabs";

const FIRST_CELL: Area = { row: 0, column: 0, rows: 1, columns: 1 };

/** How long a toast stays when the script does not say, in seconds. */
const TOAST_SECONDS = 5;

/**
 * Spreadsheet of the spreadsheet service: the workbook that the script belongs to.
 *
 * Longer than most: one object of the platform, with a short method for each of its own.
 */
export function spreadsheetService(run: Execution): ServiceObject {
  const { book } = run;
  const name = (method: string) => `SpreadsheetApp.Spreadsheet.${method}`;
  const activeId = () => book.workbook.getActiveSheet().getSheetId();
  /** From memory: where a chart is in front, no cell is selected. */
  const hasCells = () => rulesOf(book.workbook.getActiveSheet()).kind === "GRID";
  const activeSheet = () => sheetService(run, activeId());

  return serviceObject(run, "Spreadsheet", {
    methods: {
      getId: () => book.unitId,
      getName: () => book.workbook.getName(),
      getSpreadsheetTimeZone: () => run.settings.spreadsheetZone,
      getSpreadsheetLocale: () => run.settings.locale,
      getSheets: () =>
        run.realm.array(
          book.workbook.getSheets().map((sheet) => sheetService(run, sheet.getSheetId())),
        ),
      getSheetByName(text: unknown) {
        const wanted = textArgument(text, name("getSheetByName"));
        const sheet = book.workbook.getSheetBySheetName(wanted);
        return sheet ? sheetService(run, sheet.getSheetId()) : null;
      },
      insertSheet(text?: unknown, index?: unknown) {
        const method = name("insertSheet");
        const wanted = text === undefined ? freeTabName(book) : textArgument(text, method);
        // A new tab goes behind the one in front unless told otherwise.
        const behind = book.workbook.getSheetIndex(book.workbook.getActiveSheet()) + 1;
        const at = index === undefined ? behind : wholeArgument(index, method);
        return sheetService(
          run,
          insertTab(book, { name: wanted, index: at, rowCount: run.settings.newRows }),
        );
      },
      deleteSheet(sheet: unknown) {
        const sheetId = sheetIdOf(sheet, name("deleteSheet"));
        if (!run.isOwner) refuseDeletion(book, sheetId);
        deleteTab(book, sheetId);
      },
      /** Counted from 1. */
      moveActiveSheet(position: unknown) {
        moveTab(book, activeId(), wholeArgument(position, name("moveActiveSheet")) - 1);
      },
      setActiveSheet(sheet: unknown) {
        const sheetId = sheetIdOf(sheet, name("setActiveSheet"));
        select(run, sheetId, activeArea(run, sheetId));
        return sheetService(run, sheetId);
      },
      getActiveSheet: activeSheet,
      getActiveRange: () =>
        hasCells()
          ? rangeService(run, { sheetId: activeId(), area: activeArea(run, activeId()) })
          : null,
      getActiveCell() {
        if (!hasCells()) return null;
        const { row, column } = activeArea(run, activeId());
        return rangeService(run, {
          sheetId: activeId(),
          area: { row, column, rows: 1, columns: 1 },
        });
      },
      getRange(text: unknown) {
        const { sheet, cells } = splitReference(textArgument(text, name("getRange")));
        const tab =
          sheet === null
            ? book.workbook.getActiveSheet()
            : book.workbook.getSheetBySheetName(sheet);
        const area =
          tab && areaOfA1(cells, { rows: tab.getRowCount(), columns: tab.getColumnCount() });
        if (tab) refuseWithoutCells(run, tab.getSheetId());
        if (!tab || !area) throw new ServiceError("Range not found");
        return rangeService(run, {
          sheetId: tab.getSheetId(),
          area: checkedArea(run, tab.getSheetId(), area),
        });
      },
      toast(message: unknown, title?: unknown, seconds?: unknown) {
        run.desk.toast(
          String(message),
          title === undefined || title === null ? "" : String(title),
          typeof seconds === "number" ? seconds : TOAST_SECONDS,
        );
      },
    },
  });
}

/** The cells that are selected in a tab; its first one when nobody has selected any. */
function activeArea(run: Execution, sheetId: string): Area {
  const selected = run.book.injector
    .get(SheetsSelectionsService)
    .getWorkbookSelections(run.book.unitId)
    .getSelectionsOfWorksheet(sheetId)
    .at(-1)?.range;
  if (!selected) return FIRST_CELL;
  const { startRow, startColumn, endRow, endColumn } = selected;
  return {
    row: startRow,
    column: startColumn,
    rows: endRow - startRow + 1,
    columns: endColumn - startColumn + 1,
  };
}
