import * as text from "../sentences/made/report";
import { shownText } from "./cell-text";
import type { ResultTab } from "./result-tabs";
import type { SheetCell, SheetCells } from "./sheet-cells";
import { formulaCell, type SheetDraft, textCell } from "./workbook-data";

/** Rows above the formula: the heading, how it was made, and a blank one. */
const FORMULA_ROW = 3;

/** Rows of an answer's tab: a task for each step of some thousand batches has to fit. */
const ROOM = 100_000;

/** The tab on its way into the engine. */
export function draftOf(tab: ResultTab, name: string): SheetDraft {
  return {
    name,
    room: ROOM,
    rows: [
      [textCell(tab.heading)],
      // Text, not a formula: it is what the written copy keeps (see xlsx-out.ts).
      [textCell(text.madeBy({ formula: tab.formula }))],
      [],
      [formulaCell(`=${tab.formula}`)],
    ],
  };
}

/** The answer on a calculated tab: its rows, header first, or the sentence that says why not. */
export function answerOf(sheet: SheetCells): {
  rows: readonly (readonly (SheetCell | null)[])[];
  trouble: string | null;
} {
  const rows = sheet.rows.slice(FORMULA_ROW);
  const first = rows[0]?.[0];
  const failed = typeof first?.value === "string" && first.value.startsWith("#");
  return { rows, trouble: failed ? (first.message ?? first.value) : null };
}

/** The calculated tab with shares as per cent, and a column's numbers all to the same decimals. */
export function withFormats(sheet: SheetCells, shares: readonly string[]): SheetCells {
  const header = sheet.rows[FORMULA_ROW] ?? [];
  const body = sheet.rows.slice(FORMULA_ROW + 1);
  const patterns = header.map((cell, column) =>
    shares.includes(shownText(cell)) ? "0.0%" : numberPattern(body.map((row) => row[column])),
  );
  const format = (cell: SheetCell | null, column: number): SheetCell | null =>
    typeof cell?.value === "number" && cell.pattern === ""
      ? { ...cell, pattern: patterns[column] ?? "" }
      : cell;
  return {
    ...sheet,
    rows: sheet.rows.map((row, index) => (index <= FORMULA_ROW ? row : row.map(format))),
  };
}

const MOST_DECIMALS = 2;

/** As many decimals as the column's numbers need, two at most; "" where all are whole. */
function numberPattern(cells: readonly (SheetCell | null | undefined)[]): string {
  let decimals = 0;
  for (const cell of cells) {
    if (typeof cell?.value !== "number" || cell.pattern !== "") continue;
    while (decimals < MOST_DECIMALS && !isWhole(cell.value * 10 ** decimals)) decimals += 1;
  }
  return decimals === 0 ? "" : `0.${"0".repeat(decimals)}`;
}

/** Whole but for the last binary digits: 2.3 × 10 is. */
function isWhole(value: number): boolean {
  return Math.abs(value - Math.round(value)) < 1e-9;
}
