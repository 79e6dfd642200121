import { type Execution, type ServiceObject, serviceObject } from "./execution";
import { htmlService } from "./html-service";
import { dataValidationBuilder } from "./input-rule";
import { SheetType } from "./sheet-service";
import { lockService, propertiesService, sessionService, utilitiesService } from "./small-services";
import { spreadsheetService } from "./spreadsheet-service";
import { filterCriteriaBuilder } from "./tab-filter";
import { uiService } from "./ui-service";

/** The services that a script finds in its global scope. */
export function scriptGlobals(run: Execution): Record<string, ServiceObject> {
  const active = () => spreadsheetService(run);
  return {
    SpreadsheetApp: serviceObject(run, "SpreadsheetApp", {
      methods: {
        getActiveSpreadsheet: active,
        getActive: active,
        getUi: () => uiService(run),
        // Writes show at once on this host, and formulas are calculated only when the script is
        // done. What was refused comes out here.
        flush() {},
        newDataValidation: () => dataValidationBuilder(run),
        newFilterCriteria: () => filterCriteriaBuilder(run),
      },
      properties: { SheetType },
    }),
    LockService: lockService(run),
    PropertiesService: propertiesService(run),
    Session: sessionService(run),
    Utilities: utilitiesService(run),
    HtmlService: htmlService(run),
  };
}
