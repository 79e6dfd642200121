import { LocaleType, LogLevel, Univer } from "@univerjs/core";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { CalculationMode, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { hostFunctions } from "./engine-functions";

/**
 * The spreadsheet engine without a screen and without a workbook yet. It will calculate all formulas,
 * not only those without a value: a file keeps the values that another program calculated on another
 * day.
 *
 * @param zone the spreadsheet's time zone
 */
export function formulaEngine(zone: string): Univer {
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: {} },
    logLevel: LogLevel.SILENT,
  });
  univer.registerPlugin(UniverFormulaEnginePlugin, hostFunctions(zone));
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsFormulaPlugin, {
    initialFormulaComputing: CalculationMode.FORCED,
  });
  return univer;
}
