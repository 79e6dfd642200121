import { FakeSheet } from "@mcpher/gas-fakes/src/services/spreadsheetapp/fakesheet.js";
import { FakeSpreadsheet } from "@mcpher/gas-fakes/src/services/spreadsheetapp/fakespreadsheet.js";
import { FakeSpreadsheetApp } from "@mcpher/gas-fakes/src/services/spreadsheetapp/fakespreadsheetapp.js";
import { newFakeUtilities } from "@mcpher/gas-fakes/src/services/utilities/fakeutilities.js";
import { formatDate } from "../../../local/format-date";
import { wallClock } from "../../../local/wall-clock";
import { desk, ui } from "./desk";
import { lend } from "./lend";

/** The zone of workbook and script: the emulator turns dates into serial numbers by UTC alone. */
export const ZONE = "Etc/UTC";
const LOCALE = "en_GB";

interface EmulatedSpreadsheet {
  /** Theirs: reads the sheets' properties anew. */
  __disruption(): void;
  getId(): string;
}
interface EmulatedSheet {
  getSheetId(): number;
}
/** Theirs: the advanced service, through which their own methods reach the workbook as well. */
declare const Sheets: {
  readonly Spreadsheets: { batchUpdate(request: object, id: string): unknown };
};

/**
 * Methods of the platform that the job calls and the emulator lacks, or refuses as not yet
 * implemented. Without any one of them the job stops.
 */
export function lendMethods(): void {
  lend(FakeSpreadsheetApp.prototype, "getUi", () => ui);

  const spreadsheet = FakeSpreadsheet.prototype;
  lend(spreadsheet, "getSpreadsheetTimeZone", () => ZONE);
  lend(spreadsheet, "getSpreadsheetLocale", () => LOCALE);
  lend(spreadsheet, "setActiveSheet", (sheet: object) => sheet);
  lend(spreadsheet, "toast", (words: string) => {
    desk.toasts.push(words);
  });
  lend(spreadsheet, "deleteSheet", function (this: EmulatedSpreadsheet, sheet: EmulatedSheet) {
    const request = { requests: [{ deleteSheet: { sheetId: sheet.getSheetId() } }] };
    Sheets.Spreadsheets.batchUpdate(request, this.getId());
    this.__disruption();
  });

  // What is in view is looked at by nobody here.
  lend(FakeSheet.prototype, "activate", function (this: object) {
    return this;
  });

  lend(
    Object.getPrototypeOf(newFakeUtilities()),
    "formatDate",
    (date: Date, zone: string, pattern: string) => formatDate(date, wallClock(zone), pattern),
  );
}
