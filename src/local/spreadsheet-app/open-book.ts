import { ICommandService, type Injector, type Workbook, type Worksheet } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { SetWorksheetActiveOperation } from "@univerjs/sheets";
import { updateOneTab } from "./one-tab-updates";
import { ServiceError } from "./service-error";
import { moveRulesWithCells } from "./tab-rules";

/** A workbook open in the spreadsheet engine, as the imitated services see it. */
export interface OpenBook {
  readonly injector: Injector;
  readonly workbook: Workbook;
  readonly unitId: string;
  readonly formulas: FormulaDataModel;
  /** Every tab has a number for life; scripts know it by that. The first one has 0. */
  numberOf(sheetId: string): number;
  /**
   * Executes one of the engine's commands in the name of the add-in, so that it is not taken for
   * an edit of the person.
   * @throws Error when the engine refuses
   */
  execute(commandId: string, parameters: Readonly<Record<string, unknown>>): void;
  /** Brings a tab to the front. */
  show(sheetId: string): void;
  /** True while the add-in, not the person, changes the workbook. */
  isAddInAtWork(): boolean;
}

/** @param workbook one that the engine has opened already; its tabs get their numbers in their order */
export function openBook(injector: Injector, workbook: Workbook): OpenBook {
  const commands = injector.get(ICommandService);
  const unitId = workbook.getUnitId();
  const numbers = new Map<string, number>();
  let depth = 0;
  const numberOf = (sheetId: string) => {
    const number = numbers.get(sheetId) ?? numbers.size;
    numbers.set(sheetId, number);
    return number;
  };
  for (const sheet of workbook.getSheets()) numberOf(sheet.getSheetId());
  const formulas = injector.get(FormulaDataModel);
  updateOneTab(formulas);
  // Ends with the engine.
  moveRulesWithCells(commands, (sheetId) => workbook.getSheetBySheetId(sheetId));
  const execute: OpenBook["execute"] = (commandId, parameters) => {
    depth += 1;
    try {
      const done = commands.syncExecuteCommand(commandId, { unitId, ...parameters });
      if (done === false) throw new Error(`The spreadsheet engine refused ${commandId}`);
    } finally {
      depth -= 1;
    }
  };
  return {
    injector,
    workbook,
    unitId,
    formulas,
    numberOf,
    execute,
    show: (sheetId) => execute(SetWorksheetActiveOperation.id, { subUnitId: sheetId }),
    isAddInAtWork: () => depth > 0,
  };
}

/** @throws ServiceError when the tab is gone */
export function sheetOf(book: OpenBook, sheetId: string): Worksheet {
  const sheet = book.workbook.getSheetBySheetId(sheetId);
  if (!sheet) throw new ServiceError(`Sheet ${book.numberOf(sheetId)} not found`);
  return sheet;
}
