import {
  CellValueType,
  type ICellData,
  type IRange,
  type IWorkbookData,
  LocaleType,
} from "@univerjs/core";

import { ruledTab } from "./spreadsheet-app/tab-rules";

/** One tab on its way into the engine. */
export interface SheetDraft {
  readonly name: string;
  /** Rows of cells from A1 on; undefined is an empty cell. */
  readonly rows: readonly (readonly (ICellData | undefined)[])[];
  /** At least so many rows, filled or not; a formula can't fill rows that the tab lacks. */
  readonly room?: number;
  readonly hidden?: boolean;
  /** Column widths in pixels, undefined where the file names none. */
  readonly widths?: readonly (number | undefined)[];
  readonly merges?: readonly IRange[];
  /** A tab without cells: a chart on its own, or a connected source. */
  readonly kind?: "OBJECT" | "DATASOURCE";
}

/** The size of a new sheet, so that an open-ended range has the blank tail it has in real life. */
export const LEAST_ROWS = 1000;
export const LEAST_COLUMNS = 26;

/** A workbook as the engine takes it. */
export function workbookData(name: string, drafts: readonly SheetDraft[]): IWorkbookData {
  const sheets: IWorkbookData["sheets"] = {};
  const sheetOrder = drafts.map((_, index) => `sheet-${index + 1}`);
  drafts.forEach((draft, index) => {
    const id = sheetOrder[index] as string;
    const cellData: Record<number, Record<number, ICellData>> = {};
    let columns = 0;
    draft.rows.forEach((row, r) => {
      const cells: Record<number, ICellData> = {};
      row.forEach((cell, c) => {
        if (cell) cells[c] = cell;
      });
      cellData[r] = cells;
      columns = Math.max(columns, row.length);
    });
    const columnData: Record<number, { w: number }> = {};
    draft.widths?.forEach((width, column) => {
      if (typeof width === "number") columnData[column] = { w: width };
    });
    sheets[id] = {
      id,
      name: draft.name,
      rowCount: Math.max(LEAST_ROWS, draft.room ?? 0, draft.rows.length),
      columnCount: Math.max(LEAST_COLUMNS, columns),
      cellData,
      columnData,
      mergeData: [...(draft.merges ?? [])],
      hidden: draft.hidden ? 1 : 0,
      ...(draft.kind ? { custom: ruledTab({ kind: draft.kind }) } : {}),
    };
  });
  return {
    id: "workbook",
    name,
    appVersion: "",
    locale: LocaleType.EN_US,
    styles: {},
    sheetOrder,
    sheets,
  };
}

/** A cell that holds text and stays text, whatever it starts with. */
export function textCell(text: string): ICellData {
  return { v: text, t: CellValueType.STRING };
}

/** A cell that holds a number; a day is its serial number with a date pattern. */
export function numberCell(value: number, pattern?: string): ICellData {
  return { v: value, t: CellValueType.NUMBER, ...(pattern ? { s: { n: { pattern } } } : {}) };
}

/** A cell that holds true or false, as a ticked box does. */
export function booleanCell(value: boolean): ICellData {
  return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
}

/** A cell that calculates. @param formula with its leading "=" */
export function formulaCell(formula: string): ICellData {
  return { f: formula };
}
