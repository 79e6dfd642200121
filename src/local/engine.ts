import { randomUUID } from "node:crypto";
import {
  type ICellData,
  ICommandService,
  type IWorkbookData,
  UniverInstanceType,
  type Workbook,
} from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { SetRangeValuesCommand } from "@univerjs/sheets";
import { FormulaCalculationSessionService } from "@univerjs/sheets-formula";
import type { Bundle } from "./bundle";
import { registerCustomFunctions } from "./custom-function";
import { formulaEngine } from "./formula-engine";
import { type SheetCells, sheetsOf } from "./sheet-cells";

/** A workbook open in the spreadsheet engine, with the add-in's functions in its formulas. */
export interface LocalWorkbook {
  /** Every tab in order, as it is calculated now. Call it after `settled`. */
  sheets(): SheetCells[];
  /**
   * Writes one cell, as a person would who types it; row and column count from 0.
   * Wait for `settled` before the next write or read.
   * @throws Error when there is no such tab
   */
  enter(
    sheet: string,
    at: { readonly row: number; readonly column: number },
    cell: ICellData,
  ): void;
  /** Resolves when every formula is calculated. */
  settled(): Promise<void>;
  close(): void;
}

const LONGEST_CALCULATION_MS = 120_000;

/** Opens a workbook and starts to calculate all its formulas. */
export function openWorkbook(data: IWorkbookData, bundle: Bundle): LocalWorkbook {
  const univer = formulaEngine(bundle.settings.spreadsheetZone);
  const injector = univer.__getInjector();
  registerCustomFunctions(injector, bundle);
  const workbook = univer.createUnit<IWorkbookData, Workbook>(
    UniverInstanceType.UNIVER_SHEET,
    // The engine caches parsed formulas, with the functions they call, by the workbook's id and
    // beyond one engine's life: a second workbook of the same id would call the first one's add-in.
    { ...data, id: randomUUID() },
  );
  const unitId = workbook.getUnitId();
  const model = injector.get(FormulaDataModel);

  return {
    sheets: () => sheetsOf(workbook, model),
    enter(sheetName, { row, column }, cell) {
      const sheet = workbook.getSheetBySheetName(sheetName);
      if (!sheet) throw new Error(`There is no tab named "${sheetName}"`);
      // What is not in the new cell has to be cleared by name, or the old formula stays.
      const value = { v: null, f: null, si: null, p: null, t: null, ...cell };
      injector.get(ICommandService).syncExecuteCommand(SetRangeValuesCommand.id, {
        unitId,
        subUnitId: sheet.getSheetId(),
        range: { startRow: row, endRow: row, startColumn: column, endColumn: column },
        value,
      });
    },
    settled: () => calculationEnd(injector.get(FormulaCalculationSessionService)),
    close: () => univer.dispose(),
  };
}

async function calculationEnd(session: FormulaCalculationSessionService): Promise<void> {
  await session.waitForLatestApplied(LONGEST_CALCULATION_MS);
  // The results stand in the cells a moment before the engine is done. Closed in between, it would
  // leave a timer behind that throws a second later.
  const isDone = ({ started, completed, stopped }: typeof session.state) =>
    !started || completed || stopped;
  await new Promise<void>((resolve) => {
    const subscription = session.state$.subscribe((state) => {
      if (!isDone(state)) return;
      resolve();
      // Subscribing may call this before there is a subscription to end.
      queueMicrotask(() => subscription.unsubscribe());
    });
  });
}
