import {
  type ICellData,
  type ICommandInfo,
  ICommandService,
  type IExecutionOptions,
} from "@univerjs/core";
import { type ISetRangeValuesMutationParams, SetRangeValuesMutation } from "@univerjs/sheets";
import type { Area } from "./area";
import { type CellReading, cellReader } from "./cell-reading";
import type { OpenBook } from "./open-book";

/** A change of cells by the person at the keyboard. */
export interface UserEdit {
  readonly sheetId: string;
  readonly area: Area;
  /** What the cell holds now, as text; only when a single cell was changed and is not blank now. */
  readonly value?: string;
  /** What the cell held before, as text; only when a single cell was changed and was not blank. */
  readonly oldValue?: string;
}

/** Changes of looks alone, which trigger nothing. */
const LOOKS = new Set([
  "sheet.command.set-style",
  "sheet.command.set-border",
  "sheet.command.clear-selection-format",
  "sheet.command.numfmt.set.numfmt",
]);

/**
 * Tells of every change of cell content that the person makes: typing, clearing, pasting, filling,
 * ticking, undoing. What scripts write and what formulas calculate is not told.
 *
 * Not told either: cells dragged to another place, rows and columns put in or taken out.
 *
 * @returns a function that ends it
 */
export function watchUserEdits(book: OpenBook, heard: (edit: UserEdit) => void): () => void {
  const commands = book.injector.get(ICommandService);
  const before = new Map<unknown, { sheetId: string; area: Area; old: string | undefined }>();

  const ahead = commands.beforeCommandExecuted((command, options) => {
    const parameters = personsChange(book, command, options);
    const area = parameters?.cellValue ? changedArea(parameters.cellValue) : null;
    if (!parameters || !area) return;
    const sheetId = parameters.subUnitId;
    const single = area.rows === 1 && area.columns === 1;
    const old = single ? textOf(cellReader(book, sheetId)(area.row, area.column)) : undefined;
    before.set(parameters, { sheetId, area, old });
  });
  const behind = commands.onCommandExecuted((command) => {
    const edit = before.get(command.params);
    if (!edit) return;
    before.delete(command.params);
    const { sheetId, area, old } = edit;
    const single = area.rows === 1 && area.columns === 1;
    const value = single ? textOf(cellReader(book, sheetId)(area.row, area.column)) : undefined;
    heard({
      sheetId,
      area,
      ...(value === undefined ? {} : { value }),
      ...(old === undefined ? {} : { oldValue: old }),
    });
  });
  return () => {
    ahead.dispose();
    behind.dispose();
  };
}

function personsChange(
  book: OpenBook,
  command: Readonly<ICommandInfo>,
  options: IExecutionOptions | undefined,
): ISetRangeValuesMutationParams | null {
  if (command.id !== SetRangeValuesMutation.id || book.isAddInAtWork()) return null;
  if (options?.onlyLocal || options?.fromFormula || options?.applyFormulaCalculationResult) {
    return null;
  }
  const parameters = command.params as ISetRangeValuesMutationParams;
  if (parameters.unitId !== book.unitId || LOOKS.has(parameters.trigger ?? "")) return null;
  return book.workbook.getSheetBySheetId(parameters.subUnitId) ? parameters : null;
}

/** The block around the cells whose content changes; null when none does. */
function changedArea(cells: ISetRangeValuesMutationParams["cellValue"]): Area | null {
  const rows: number[] = [];
  const columns: number[] = [];
  for (const [row, changes] of Object.entries(cells ?? {})) {
    for (const [column, cell] of Object.entries<ICellData | null | undefined>(changes ?? {})) {
      const content = !cell || "v" in cell || "f" in cell || "p" in cell || "si" in cell;
      if (!content) continue;
      rows.push(Number(row));
      columns.push(Number(column));
    }
  }
  if (rows.length === 0) return null;
  const top = rows.reduce((least, row) => Math.min(least, row));
  const left = columns.reduce((least, column) => Math.min(least, column));
  return {
    row: top,
    column: left,
    rows: rows.reduce((most, row) => Math.max(most, row)) - top + 1,
    columns: columns.reduce((most, column) => Math.max(most, column)) - left + 1,
  };
}

/** As triggers get it: raw text, "TRUE", a day as its serial number. */
function textOf({ value, kind }: CellReading): string | undefined {
  if (value === null) return undefined;
  return kind === "boolean" ? String(value).toUpperCase() : String(value);
}
