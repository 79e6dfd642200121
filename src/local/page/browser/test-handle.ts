import type { ScriptSettings } from "../../script-services";
import { areaOfA1 } from "../../spreadsheet-app/area";
import type { EditTrigger } from "../../spreadsheet-app/edit-trigger";
import type { ServiceObject } from "../../spreadsheet-app/execution";
import { ownRealm } from "../../spreadsheet-app/script-realm";
import type { ServiceMeter } from "../../spreadsheet-app/service-meter";
import { typeIn } from "../../spreadsheet-app/typing";
import type { Session } from "./session";

/** What tests that drive the page in a browser find as `localPage`. */
export interface LocalPageHandle {
  /** Counts the services that scripts call, and lets calls fail (see service-meter.ts). */
  readonly meter: ServiceMeter;
  /** The trigger onEdit; `dropsAll = true` loses every edit. */
  readonly edits: EditTrigger;
  readonly isLockFree: boolean;
  /** SpreadsheetApp for the test itself: not counted by the meter. */
  app(): ServiceObject;
  /** Types into a cell, as another person would who has the workbook open. */
  type(sheet: string, cell: string, text: string): void;
  /** Resolves when every trigger has run and every formula is calculated. */
  settled(): Promise<void>;
}

declare global {
  interface Window {
    localPage?: LocalPageHandle;
  }
}

/** @param current the workbook that is open now */
export function exposeForTests(current: () => Session, settings: ScriptSettings): void {
  window.localPage = {
    get meter() {
      return current().host.meter;
    },
    get edits() {
      return current().edits;
    },
    get isLockFree() {
      return current().host.lock.isFree();
    },
    app: () =>
      current().host.begin(ownRealm(), "full", false).globals.SpreadsheetApp as ServiceObject,
    type(sheetName, cell, text) {
      const { book } = current();
      const sheet = book.workbook.getSheetBySheetName(sheetName);
      const size = sheet && { rows: sheet.getRowCount(), columns: sheet.getColumnCount() };
      const at = size && areaOfA1(cell, size);
      if (!sheet || !at) throw new Error(`There is no cell ${cell} in a tab ${sheetName}`);
      typeIn(book, sheet.getSheetId(), {
        corner: at,
        rows: [[text]],
        typing: {
          locale: settings.locale,
          year: new Date().getFullYear(),
        },
      });
    },
    settled: () => current().settled(),
  };
}
