import { exampleWorkbook } from "../functions/example-workbook";
import { type FunctionEntry, registry } from "../functions/index";
import { loadBundle } from "../local/bundle";
import { openWorkbook } from "../local/engine";
import { isoOfSerial, serialOfIso } from "../local/serial-day";
import type { SheetCell, SheetCells } from "../local/sheet-cells";
import { formulaCell, numberCell, textCell, workbookData } from "../local/workbook-data";

const ROWS_SHOWN = 8;

/**
 * The function reference as Markdown. Every example is calculated by the built file inside the
 * local workbook, so what the page shows is what a cell shows.
 *
 * @param code text of the built file
 */
export async function functionReference(code: string): Promise<string> {
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
  return [
    "# Functions",
    "",
    "Made by `npm run docs` from the registry; do not edit by hand. The examples are asked of the",
    "small invented workbook at the end of this page and calculated by the built add-in.",
    "",
    "Leave a middle argument out with nothing between the commas: `=BATCH_STAGES(Records!A1:M7, , Settings!B1, 0.9)`.",
    "Where your workbook's language has a decimal comma (_File → Settings → Locale_: France, Brazil, Indonesia",
    "and others), `;` stands between arguments: `=BATCH_STAGES(Records!A1:M7; ; Settings!B1; 0,9)`. With `;` every",
    "workbook takes a formula that holds no decimal number.",
    "",
    ...registry.flatMap((entry) => section(entry, sheets)),
    "## The example workbook",
    "",
    ...Object.entries(exampleWorkbook).flatMap(([name, rows]) => [
      `Tab ${name}:`,
      "",
      ...table(rows.map((row) => row.map(String))),
      "",
    ]),
  ].join("\n");
}

function section(entry: FunctionEntry, sheets: readonly SheetCells[]): string[] {
  const names = entry.parameters.map(({ name, optional }) => (optional ? `[${name}]` : name));
  const rows = sheets.find((sheet) => sheet.name === entry.name)?.rows ?? [];
  const failed = rows[0]?.[0]?.message;
  if (failed !== undefined || rows.length === 0) {
    throw new Error(`the example of ${entry.name} failed: ${failed ?? "nothing came back"}`);
  }
  const more = rows.length - ROWS_SHOWN;
  const headings = entry.exampleHeadings;
  return [
    `## ${entry.name}`,
    "",
    `\`${entry.name}(${names.join(", ")})\``,
    "",
    entry.sentence,
    "",
    ...entry.parameters.map(({ name, sentence }) => `- \`${name}\`: ${sentence}`),
    "",
    `Answers: ${entry.answers}`,
    "",
    `Example: \`${entry.example}\``,
    "",
    ...table([
      ...(headings === undefined ? [] : [headings]),
      ...rows.slice(0, ROWS_SHOWN).map((row) => row.map(shown)),
    ]),
    ...(headings === undefined ? [] : ["", "The cells have the numbers alone, without a header."]),
    ...(more > 0 ? ["", `… and ${more} more rows.`] : []),
    "",
  ];
}

function exampleCell(value: string | number) {
  if (typeof value === "number") return numberCell(value);
  const serial = serialOfIso(value);
  if (serial !== null) return numberCell(serial, "yyyy-mm-dd");
  return value === "" ? undefined : textCell(value);
}

function shown(cell: SheetCell | null): string {
  if (cell === null) return "";
  if (typeof cell.value !== "number") return String(cell.value);
  if (/y/i.test(cell.pattern)) return isoOfSerial(cell.value);
  return String(Math.round(cell.value * 1000) / 1000);
}

function table(rows: readonly (readonly string[])[]): string[] {
  const width = Math.max(...rows.map((row) => row.length));
  const line = (row: readonly string[]) =>
    `| ${Array.from({ length: width }, (_, i) => (row[i] ?? "").replace(/\|/g, "\\|")).join(" | ")} |`;
  const [header = [], ...body] = rows;
  return [line(header), `|${" --- |".repeat(width)}`, ...body.map(line)];
}
