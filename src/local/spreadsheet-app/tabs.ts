import { BooleanNumber, generateRandomId, type Worksheet } from "@univerjs/core";
import {
  InsertSheetCommand,
  RemoveSheetCommand,
  SetWorksheetActiveOperation,
  SetWorksheetHideMutation,
  SetWorksheetOrderCommand,
} from "@univerjs/sheets";
import { type OpenBook, sheetOf } from "./open-book";
import { ServiceError } from "./service-error";

/** The size of a new tab. Source: stored page of a public automation tool's manual, "1000 x 26". */
const NEW_ROWS = 1000;
const NEW_COLUMNS = 26;

interface NewTab {
  readonly name: string;
  /** Counted from 0. */
  readonly index: number;
  readonly rowCount?: number | undefined;
}

/** Adds a tab and shows it. @returns its id */
export function insertTab(book: OpenBook, { name, index, rowCount = NEW_ROWS }: NewTab): string {
  refuseTakenName(book, name, null);
  const id = generateRandomId();
  book.execute(InsertSheetCommand.id, {
    index: Math.min(Math.max(0, index), book.workbook.getSheets().length),
    sheet: { id, name, rowCount, columnCount: NEW_COLUMNS },
  });
  book.execute(SetWorksheetActiveOperation.id, { subUnitId: id });
  return id;
}

/** @throws ServiceError when it is the last one that shows */
export function deleteTab(book: OpenBook, sheetId: string): void {
  const sheet = sheetOf(book, sheetId);
  if (shown(book).every((one) => one === sheet)) {
    throw new ServiceError("You can't remove all the visible sheets in a document.");
  }
  leaveTab(book, sheet);
  book.execute(RemoveSheetCommand.id, { subUnitId: sheetId });
}

/** @param index counted from 0 */
export function moveTab(book: OpenBook, sheetId: string, index: number): void {
  if (index < 0 || index >= book.workbook.getSheets().length) {
    throw new ServiceError("Invalid sheet index.");
  }
  book.execute(SetWorksheetOrderCommand.id, { subUnitId: sheetId, order: index });
}

/** @throws ServiceError when it is the last one that shows */
export function hideTab(book: OpenBook, sheetId: string): void {
  const sheet = sheetOf(book, sheetId);
  if (isTabHidden(sheet)) return;
  if (shown(book).every((one) => one === sheet)) {
    throw new ServiceError("You can't hide all the sheets in a document.");
  }
  leaveTab(book, sheet);
  setHidden(book, sheetId, BooleanNumber.TRUE);
}

/** Shows a hidden tab again, without going to it. */
export function showTab(book: OpenBook, sheetId: string): void {
  if (!isTabHidden(sheetOf(book, sheetId))) return;
  const front = book.workbook.getActiveSheet().getSheetId();
  setHidden(book, sheetId, BooleanNumber.FALSE);
  // The engine goes to the tab that it shows.
  book.execute(SetWorksheetActiveOperation.id, { subUnitId: front });
}

/** Whether a tab is hidden, as a whole. */
export function isTabHidden(sheet: Worksheet): boolean {
  return sheet.isSheetHidden() === BooleanNumber.TRUE;
}

/**
 * Source of the sentence: messages quoted in public repositories.
 *
 * @param except the id of the tab that may have the name already; null for none
 * @throws ServiceError where another tab is called so, capitals aside
 */
export function refuseTakenName(book: OpenBook, name: string, except: string | null): void {
  const wanted = name.toLowerCase();
  const taken = book.workbook
    .getSheets()
    .some((sheet) => sheet.getSheetId() !== except && sheet.getName().toLowerCase() === wanted);
  if (!taken) return;
  throw new ServiceError(
    `A sheet with the name "${name}" already exists. Please enter another name.`,
  );
}

/** A name such as "Sheet3" that no tab has. */
export function freeTabName(book: OpenBook): string {
  const taken = new Set(book.workbook.getSheets().map((sheet) => sheet.getName().toLowerCase()));
  let number = taken.size + 1;
  while (taken.has(`sheet${number}`)) number += 1;
  return `Sheet${number}`;
}

function shown(book: OpenBook): Worksheet[] {
  return book.workbook.getSheets().filter((sheet) => !isTabHidden(sheet));
}

/** Goes to a neighbour, if this is the tab in front. */
function leaveTab(book: OpenBook, sheet: Worksheet): void {
  if (book.workbook.getActiveSheet() !== sheet) return;
  const tabs = book.workbook.getSheets();
  const at = tabs.indexOf(sheet);
  const next = [...tabs.slice(at + 1), ...tabs.slice(0, at).reverse()].find(
    (one) => !isTabHidden(one),
  );
  if (next) book.execute(SetWorksheetActiveOperation.id, { subUnitId: next.getSheetId() });
}

/** Not by the engine's commands: the one that hides refuses some of what is allowed here. */
function setHidden(book: OpenBook, sheetId: string, hidden: BooleanNumber): void {
  book.execute(SetWorksheetHideMutation.id, { subUnitId: sheetId, hidden });
}
