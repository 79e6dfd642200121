import type { ICellData } from "@univerjs/core";
import { afterEach } from "vitest";
import {
  openScriptWorkbook,
  type ScriptWorkbook,
  type ScriptWorkbookOptions,
} from "../../../src/local/script-workbook";
import { workbookData } from "../../../src/local/workbook-data";

interface OpenedWith extends Pick<ScriptWorkbookOptions, "lateRefusals" | "hasDocumentLock"> {
  readonly rows?: readonly (readonly (ICellData | undefined)[])[];
  readonly code?: string;
  readonly zone?: string;
  readonly locale?: string;
  readonly pages?: Readonly<Record<string, string>>;
  readonly refusesToday?: boolean;
  readonly keepsFiltered?: boolean;
}

const open: ScriptWorkbook[] = [];
afterEach(() => {
  for (const workbook of open.splice(0)) workbook.close();
});

/** 14 March 2026, noon UTC. */
const NOON = Date.UTC(2026, 2, 14, 12);

/** A workbook "Trial" with the tabs "Main" and "Other"; closed after the test. */
export function opened({
  rows = [],
  code = "",
  zone,
  locale,
  pages,
  refusesToday = false,
  keepsFiltered = false,
  ...more
}: OpenedWith = {}) {
  const scriptZone = Intl.DateTimeFormat().resolvedOptions().timeZone;
  const workbook = openScriptWorkbook(
    code,
    workbookData("Trial", [
      { name: "Main", rows },
      { name: "Other", rows: [] },
    ]),
    {
      settings: {
        spreadsheetZone: zone ?? scriptZone,
        scriptZone,
        locale: locale ?? "en_GB",
        refusesToday,
        keepsFiltered,
      },
      ...more,
      now: () => NOON,
      ...(pages ? { pages } : {}),
    },
  );
  open.push(workbook);
  const run = workbook.begin();
  const app = run.globals.SpreadsheetApp as unknown as App;
  return {
    workbook,
    run,
    app,
    book: app.getActive(),
    main: app.getActive().getSheetByName("Main") as Sheet,
  };
}

/** The parts of the services that the tests use, as a script would call them. */
interface App {
  getActive(): Spreadsheet;
  getActiveSpreadsheet(): Spreadsheet;
  // biome-ignore lint/suspicious/noExplicitAny: a script has no types either
  getUi(): any;
  flush(): void;
  // biome-ignore lint/suspicious/noExplicitAny: a script has no types either
  newDataValidation(): any;
  // biome-ignore lint/suspicious/noExplicitAny: a script has no types either
  newFilterCriteria(): any;
}
// biome-ignore lint/suspicious/noExplicitAny: a script has no types either
type Spreadsheet = any;
// biome-ignore lint/suspicious/noExplicitAny: a script has no types either
export type Sheet = any;

/** The error that a call throws. */
export function thrown(call: () => unknown): { name: string; message: string } {
  try {
    call();
  } catch (error) {
    const { name, message } = error as Error;
    return { name, message };
  }
  throw new Error("It did not throw");
}
