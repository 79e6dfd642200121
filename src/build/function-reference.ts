import { exampleWorkbook } from "../functions/example-workbook";
import { type FunctionEntry, registry } from "../functions/index";
import { isoOfSerial } from "../local/serial-day";
import type { SheetCell } from "../local/sheet-cells";
import { parametersOf } from "./contract";
import type { exampleAnswers } from "./example-answers";

const ROWS_SHOWN = 8;

type ExampleAnswers = Awaited<ReturnType<typeof exampleAnswers>>;

/** The function reference as Markdown, with what the examples answer. */
export function functionReference(answers: ExampleAnswers): string {
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
    ...registry.flatMap((entry) => section(entry, answers.get(entry.name) ?? [])),
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

function section(entry: FunctionEntry, rows: readonly (readonly (SheetCell | null)[])[]): string[] {
  const more = rows.length - ROWS_SHOWN;
  const headings = entry.exampleHeadings;
  return [
    `## ${entry.name}`,
    "",
    `\`${entry.name}(${parametersOf(entry)})\``,
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
