import { exampleWorkbook } from "../functions/example-workbook";
import { registry } from "../functions/index";
import { loadBundle } from "../local/bundle";
import { openWorkbook } from "../local/engine";
import { serialOfIso } from "../local/serial-day";
import type { SheetCell } from "../local/sheet-cells";
import { formulaCell, numberCell, textCell, workbookData } from "../local/workbook-data";

type Rows = readonly (readonly (SheetCell | null)[])[];

/**
 * What the example of each function answers, by the function's name. Every example is calculated by the built
 * file inside the local workbook, so that a page shows what a cell shows.
 *
 * @param code text of the built file
 */
export async function exampleAnswers(code: string): Promise<ReadonlyMap<string, Rows>> {
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
  const bundle = loadBundle(code, { spreadsheetZone: zone, scriptZone: zone, locale: "en_GB" });
  const workbook = openWorkbook(
    workbookData("examples", [
      ...Object.entries(exampleWorkbook).map(([name, rows]) => ({
        name,
        rows: rows.map((row) => row.map(exampleCell)),
      })),
      ...registry.map(({ name, example }) => ({ name, rows: [[formulaCell(example)]] })),
    ]),
    bundle,
  );
  await workbook.settled();
  const sheets = workbook.sheets();
  workbook.close();
  return new Map(
    registry.map(({ name }) => {
      const rows = sheets.find((sheet) => sheet.name === name)?.rows ?? [];
      const failed = rows[0]?.[0]?.message;
      if (failed !== undefined || rows.length === 0) {
        throw new Error(`the example of ${name} failed: ${failed ?? "nothing came back"}`);
      }
      return [name, rows] as const;
    }),
  );
}

function exampleCell(value: string | number) {
  if (typeof value === "number") return numberCell(value);
  const serial = serialOfIso(value);
  if (serial !== null) return numberCell(serial, "yyyy-mm-dd");
  return value === "" ? undefined : textCell(value);
}
