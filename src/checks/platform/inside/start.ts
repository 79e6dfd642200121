/**
 * What is loaded into the emulator's context: those of its services that the add-in uses, with what
 * we lend and mend. The script is run in the same context afterwards.
 */
import "@mcpher/gas-fakes/src/services/scriptapp/app.js";
import "@mcpher/gas-fakes/src/services/spreadsheetapp/app.js";
import "@mcpher/gas-fakes/src/services/advsheets/app.js";
import "@mcpher/gas-fakes/src/services/lock/app.js";
import "@mcpher/gas-fakes/src/services/session/app.js";
import "@mcpher/gas-fakes/src/services/utilities/app.js";
import { Auth } from "@mcpher/gas-fakes/src/support/auth.js";
import type { StoredBook } from "../rest/stored-book";
import { desk, htmlService } from "./desk";
import { lendMethods, ZONE } from "./lent-methods";
import { mendMethods } from "./mended-methods";
import { answerFrom } from "./network";
import { person } from "./person";

declare const SpreadsheetApp: {
  openById(id: string): object;
  setActiveSpreadsheet(spreadsheet: object): void;
};
declare const ScriptApp: { __documentId: string };

lendMethods();
mendMethods();

/** Opens a workbook, to which the script is bound from here on. @param json of a StoredBook */
function open(json: string, sidebarPage: string): void {
  const book = JSON.parse(json) as StoredBook;
  Auth.setSettings({ documentId: book.id });
  Auth.setManifest({ timeZone: ZONE });
  // Without it the emulator takes the script for one without a document, which has no lock.
  ScriptApp.__documentId = book.id;
  Object.assign(globalThis, {
    // Asked once, for owners and editors of the file, which the add-in has no use for.
    DriveApp: { getFileById: () => ({}) },
    HtmlService: htmlService("Sidebar", sidebarPage),
  });
  answerFrom(book);
  SpreadsheetApp.setActiveSpreadsheet(SpreadsheetApp.openById(book.id));
}

export { desk, open, person };
