import { SIDEBAR_CALLS } from "../../src/build/stubs";
import { openFile } from "../../src/local/open-file";
import { openScriptWorkbook, type ScriptWorkbook } from "../../src/local/script-workbook";
import { workbookData } from "../../src/local/workbook-data";
import type { CallResult } from "../../src/wire/calls";
import { buildAddIn } from "../support/built-add-in";
import type { Answers } from "./script-runner";

const AS_OF = "2026-11-25";
const SAMPLE = "sample-sheets/hillside-nursery/hillside-nursery.xlsx";

let opened: ScriptWorkbook | null = null;

/** The invented sample nursery, set up and seen from a day that stays. */
function sample(): ScriptWorkbook {
  if (opened !== null) return opened;
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
  opened = openScriptWorkbook(
    buildAddIn().read("Code.js"),
    workbookData("Hillside nursery (invented)", openFile(SAMPLE, new Set())),
    {
      settings: {
        ...{ spreadsheetZone: zone, scriptZone: zone, locale: "en_GB" },
        ...{ refusesToday: false, keepsFiltered: false },
      },
      now: () => Date.UTC(2026, 10, 25, 9),
    },
  );
  dataOf(opened.run("sidebarSetUp", { tab: "Records", columns: [], methods: [] }));
  // The engine's TODAY() is the day on which the tests run.
  const { SpreadsheetApp } = opened.uncounted();
  // biome-ignore lint/suspicious/noExplicitAny: a script has no types either
  const workbook = (SpreadsheetApp as any).getActiveSpreadsheet();
  workbook.getSheetByName("Nursery settings").getRange("B4").setValue(AS_OF);
  return opened;
}

function dataOf(result: unknown): unknown {
  const { ok, ...rest } = result as CallResult<unknown>;
  if (ok && "data" in rest) return rest.data;
  throw new Error(`the sample nursery refuses: ${JSON.stringify(rest)}`);
}

/** What the built script answers each call of the sample nursery, opened when a call is asked. */
export const sampleAnswers = Object.fromEntries(
  SIDEBAR_CALLS.map((name) => [name, (request: unknown) => dataOf(sample().run(name, request))]),
) as Required<Answers>;
