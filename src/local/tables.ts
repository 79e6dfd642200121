import * as said from "../sentences/made/report";
import { isDatePattern } from "./cell-kinds";
import { shownText } from "./cell-text";
import type { SheetCell } from "./sheet-cells";
import { wrapText } from "./wrap-text";

type Row = readonly (SheetCell | null | undefined)[];

export interface TableOptions {
  /** The widest line, in characters. */
  readonly width?: number;
  /** The most rows to print; what is left out is counted below. */
  readonly limit?: number;
  /** The tab that holds the rows left out. */
  readonly tab?: string;
  /** Names of the columns to print, in this order; all of them when left out. */
  readonly columns?: readonly string[];
}

const GAP = "  ";
/** Text columns are not made narrower than this to fit a line. */
const NARROWEST_TEXT = 12;

/**
 * An answer as a text table for a terminal.
 *
 * Numbers stand on the right, days as ISO 8601; long headers and long texts run over several
 * lines, so that nothing is cut off. A closing row with nothing but a first cell is a remark
 * about the whole and is printed below.
 *
 * @param rows rows of cells, the header first
 */
export function textTable(rows: readonly Row[], options: TableOptions = {}): string {
  const [header = [], ...all] = rows;
  const { body, remark } = splitRemark(all, header.length);
  const shown = body.slice(0, options.limit ?? body.length);
  const columns = chooseColumns(header, options.columns).map((index) => {
    const cells = shown.map((row) => row[index]);
    return {
      name: shownText(header[index]),
      texts: alignedTexts(cells),
      isNumber: cells.some(isNumber) && cells.every((cell) => !cell || isNumber(cell)),
      wraps: cells.some((cell) => typeof cell?.value === "string"),
    };
  });
  const widths = fitWidths(columns, options.width ?? 120);
  const align = (text: string, column: number) =>
    columns[column]?.isNumber
      ? text.padStart(widths[column] ?? 0)
      : text.padEnd(widths[column] ?? 0);
  const printRow = (texts: readonly string[], upward: boolean): string[] => {
    const wrapped = texts.map((text, column) => wrapText(text, widths[column] ?? text.length));
    const height = Math.max(1, ...wrapped.map((lines) => lines.length));
    return Array.from({ length: height }, (_, line) =>
      wrapped
        .map((lines, column) => {
          const at = upward ? line - (height - lines.length) : line;
          return align(lines[at] ?? "", column);
        })
        .join(GAP)
        .trimEnd(),
    );
  };
  const lines = printRow(
    columns.map(({ name }) => name),
    true,
  );
  lines.push(widths.map((width) => "─".repeat(width)).join(GAP));
  shown.forEach((_, row) => {
    lines.push(
      ...printRow(
        columns.map(({ texts }) => texts[row] ?? ""),
        false,
      ),
    );
  });
  if (body.length === 0) lines.push(said.none());
  if (shown.length < body.length) {
    const more = body.length - shown.length;
    const { tab } = options;
    lines.push(tab === undefined ? said.more({ more }) : said.moreInTab({ more, tab }));
  }
  if (remark) lines.push(...wrapText(remark, options.width ?? 120));
  return lines.join("\n");
}

function splitRemark(all: readonly Row[], width: number): { body: readonly Row[]; remark: string } {
  const last = all.at(-1);
  const lone = width > 1 && last?.filter((cell) => shownText(cell) !== "").length === 1;
  const remark = lone ? shownText(last[0]) : "";
  return remark === "" ? { body: all, remark } : { body: all.slice(0, -1), remark };
}

function chooseColumns(header: Row, names: readonly string[] | undefined): number[] {
  const every = header.map((_, index) => index);
  if (!names) return every;
  const found = names.map((name) => header.findIndex((cell) => shownText(cell) === name));
  const known = found.filter((index) => index >= 0);
  return known.length > 0 ? known : every;
}

/** The texts of a column's cells; numbers get as many decimals as the one that has most. */
function alignedTexts(cells: readonly (SheetCell | null | undefined)[]): string[] {
  const decimals = Math.max(
    0,
    ...cells.filter(isNumber).map((cell) => decimalsOf(shownText(cell))),
  );
  return cells.map((cell) => {
    const text = shownText(cell);
    if (!isNumber(cell) || text.endsWith("%")) return text;
    return Number(text).toFixed(decimals);
  });
}

function decimalsOf(number: string): number {
  return number.endsWith("%") ? 0 : (number.split(".")[1]?.length ?? 0);
}

function isNumber(cell: SheetCell | null | undefined): boolean {
  return typeof cell?.value === "number" && !isDatePattern(cell.pattern);
}

/**
 * Column widths that fit a line if they can: first headers are wrapped, then long texts. Numbers
 * and days are never broken.
 */
function fitWidths(
  columns: readonly { name: string; texts: readonly string[]; wraps: boolean }[],
  width: number,
): number[] {
  const longest = (texts: readonly string[]) => Math.max(1, ...texts.map(({ length }) => length));
  const full = columns.map(({ name, texts }) => longest([name, ...texts]));
  const snug = columns.map(({ name, texts }) => longest([...name.split(" "), ...texts]));
  const least = columns.map(({ wraps }, index) =>
    wraps ? Math.min(snug[index] ?? 0, NARROWEST_TEXT) : (snug[index] ?? 0),
  );
  return shrink(shrink(full, snug, width), least, width);
}

/** Takes from the widest column first, down to each column's floor, until the line fits. */
function shrink(start: readonly number[], floors: readonly number[], width: number): number[] {
  const widths = [...start];
  const spare = (index: number) => (widths[index] ?? 0) > (floors[index] ?? 0);
  let over = widths.reduce((sum, one) => sum + one + GAP.length, -GAP.length) - width;
  for (; over > 0; over--) {
    const shrinkable = widths.map((_, index) => index).filter(spare);
    if (shrinkable.length === 0) break;
    const widest = shrinkable.reduce((best, index) =>
      (widths[index] ?? 0) > (widths[best] ?? 0) ? index : best,
    );
    widths[widest] = (widths[widest] ?? 0) - 1;
  }
  return widths;
}
