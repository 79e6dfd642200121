import { type Injector, LocaleType, LogLevel, mergeLocales, Univer } from "@univerjs/core";
import { UniverDataValidationPlugin } from "@univerjs/data-validation";
import dataValidationWords from "@univerjs/data-validation/locale/en-US";
import designWords from "@univerjs/design/locale/en-US";
import { UniverDocsPlugin } from "@univerjs/docs";
import { UniverDocsUIPlugin } from "@univerjs/docs-ui";
import docsWords from "@univerjs/docs-ui/locale/en-US";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverRenderEnginePlugin } from "@univerjs/engine-render";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import sheetsWords from "@univerjs/sheets/locale/en-US";
import { UniverSheetsDataValidationPlugin } from "@univerjs/sheets-data-validation";
import sheetsDataValidationWords from "@univerjs/sheets-data-validation/locale/en-US";
import { UniverSheetsDataValidationUIPlugin } from "@univerjs/sheets-data-validation-ui";
import sheetsDataValidationUiWords from "@univerjs/sheets-data-validation-ui/locale/en-US";
import { CalculationMode, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import formulaWords from "@univerjs/sheets-formula/locale/en-US";
import { UniverSheetsFormulaUIPlugin } from "@univerjs/sheets-formula-ui";
import formulaUiWords from "@univerjs/sheets-formula-ui/locale/en-US";
import { UniverSheetsNumfmtPlugin } from "@univerjs/sheets-numfmt";
import { UniverSheetsNumfmtUIPlugin } from "@univerjs/sheets-numfmt-ui";
import numfmtWords from "@univerjs/sheets-numfmt-ui/locale/en-US";
import { UniverSheetsUIPlugin } from "@univerjs/sheets-ui";
import sheetsUiWords from "@univerjs/sheets-ui/locale/en-US";
import { defaultTheme } from "@univerjs/themes";
import { UniverUIPlugin } from "@univerjs/ui";
import uiWords from "@univerjs/ui/locale/en-US";
import { hostFunctions } from "../../engine-functions";
import "@univerjs/design/lib/index.css";
import "@univerjs/ui/lib/index.css";
import "@univerjs/docs-ui/lib/index.css";
import "@univerjs/sheets-ui/lib/index.css";
import "@univerjs/sheets-formula-ui/lib/index.css";
import "@univerjs/sheets-numfmt-ui/lib/index.css";
import "@univerjs/sheets-data-validation-ui/lib/index.css";

/**
 * The spreadsheet engine with its grid, not yet with a workbook.
 * @param container id of an element
 * @param zone the spreadsheet's time zone, by which TODAY() goes
 */
export function createEngine(
  container: string,
  zone: string,
): { univer: Univer; injector: Injector } {
  const univer = new Univer({
    theme: defaultTheme,
    locale: LocaleType.EN_US,
    locales: {
      [LocaleType.EN_US]: mergeLocales(
        designWords,
        uiWords,
        docsWords,
        sheetsWords,
        sheetsUiWords,
        formulaWords,
        formulaUiWords,
        numfmtWords,
        dataValidationWords,
        sheetsDataValidationWords,
        sheetsDataValidationUiWords,
      ),
    },
    logLevel: LogLevel.WARN,
  });
  univer.registerPlugin(UniverRenderEnginePlugin);
  univer.registerPlugin(UniverFormulaEnginePlugin, hostFunctions(zone));
  // The bar of buttons is left out: this page is for trying the add-in.
  univer.registerPlugin(UniverUIPlugin, { container, header: true, toolbar: false, footer: true });
  univer.registerPlugin(UniverDocsPlugin);
  univer.registerPlugin(UniverDocsUIPlugin);
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsUIPlugin, {
    // Below the grid only the tabs: in a narrow window the rest would lie over them.
    footer: {
      menus: false,
      statisticBar: false,
      zoomSlider: false,
      addSheetButtonConfig: { defaultRowCount: 1000, defaultColumnCount: 26 },
    },
    // Codes such as 007 are text on purpose.
    disableForceStringAlert: true,
    disableForceStringMark: true,
  });
  univer.registerPlugin(UniverSheetsNumfmtPlugin);
  univer.registerPlugin(UniverSheetsNumfmtUIPlugin);
  univer.registerPlugin(UniverSheetsFormulaPlugin, {
    initialFormulaComputing: CalculationMode.FORCED,
  });
  univer.registerPlugin(UniverSheetsFormulaUIPlugin);
  univer.registerPlugin(UniverDataValidationPlugin);
  univer.registerPlugin(UniverSheetsDataValidationPlugin);
  univer.registerPlugin(UniverSheetsDataValidationUIPlugin);
  return { univer, injector: univer.__getInjector() };
}
