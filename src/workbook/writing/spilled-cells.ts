import { cellName } from "../host/cell-name";

/** A table's cells at one moment, from its tab's first cell on. */
export interface Snapshot {
  readonly values: readonly (readonly unknown[])[];
  /** '' where a cell holds none. */
  readonly formulas: readonly (readonly string[])[];
}

/**
 * Functions whose answer fills cells beside and below their own.
 *
 * Source: the function list of the spreadsheet, its array, filter and web functions; from memory.
 */
const FILLS =
  /\b(ARRAYFORMULA|ARRAY_CONSTRAIN|FILTER|SORTN?|UNIQUE|QUERY|IMPORT(?:RANGE|DATA|HTML|XML|FEED)|MAP|BYROW|BYCOL|SCAN|MAKEARRAY|SEQUENCE|RANDARRAY|TRANSPOSE|[VH]STACK|SPLIT|FLATTEN|TO(?:COL|ROW)|WRAP(?:ROWS|COLS)|CHOOSE(?:ROWS|COLS)|EXPAND|FREQUENCY|MMULT|GROWTH|TREND|GOOGLEFINANCE)\s*\(|\{/i;

/** Functions that make one value of a range, so that a range in them fills nothing. */
const ONE_VALUE =
  /^(SUM\w*|COUNT\w*|AVERAGE\w*|MAX\w*|MIN\w*|MEDIAN|MODE\w*|PRODUCT|SUBTOTAL|AGGREGATE|[VHX]?LOOKUP|INDEX|X?MATCH|TEXTJOIN|JOIN|CONCATENATE|STDEV\w*|VAR\w*|PERCENTILE\w*|QUARTILE\w*|RANK\w*|LARGE|SMALL|AND|OR|XOR|ROWS?|COLUMNS?|D(?:SUM|GET|COUNT|AVERAGE)|CORREL|FORECAST\w*|SLOPE|INTERCEPT|NPV|IRR|OFFSET|INDIRECT|SPARKLINE|ISBLANK)$/i;

/** A formula that fills other cells, and how far it may. */
export interface Filler {
  /** From 1. */
  readonly row: number;
  readonly column: number;
  readonly reach: readonly { readonly rows: number; readonly columns: number }[];
}

/**
 * Formulas that fill other cells. The platform does not tell how far an answer reaches, so it is
 * judged by the formula's text.
 */
export function fillers({ values, formulas }: Snapshot): readonly Filler[] {
  return formulas.flatMap((cells, row) =>
    cells.flatMap((formula, column): Filler[] => {
      if (formula === "" || isBroken(values[row]?.[column])) return [];
      const reach = reachOf(formula);
      return reach.length === 0 ? [] : [{ row: row + 1, column: column + 1, reach }];
    }),
  );
}

/** The cell whose formula fills a cell, both from 1; null where none does. */
export function filledFrom(
  found: readonly Filler[],
  { formulas }: Snapshot,
  cell: { readonly row: number; readonly column: number },
): string | null {
  const filler = found.find(({ row, column, reach }) => {
    const [down, wide] = [cell.row - row + 1, cell.column - column + 1];
    if (down < 1 || wide < 1 || (down === 1 && wide === 1)) return false;
    const isNear = reach.some(({ rows, columns }) => rows >= down && columns >= wide);
    return (
      isNear && isFree(formulas, { top: row, left: column, bottom: cell.row, right: cell.column })
    );
  });
  return filler === undefined ? null : cellName(filler);
}

/** A formula that could not fill its cells shows that, and fills none. */
export function isBroken(value: unknown): boolean {
  return typeof value === "string" && value.startsWith("#");
}

/** No formula stands in the block that would be filled: else the upper one would be broken. */
function isFree(
  formulas: Snapshot["formulas"],
  {
    top,
    left,
    bottom,
    right,
  }: {
    readonly top: number;
    readonly left: number;
    readonly bottom: number;
    readonly right: number;
  },
): boolean {
  for (let row = top; row <= bottom; row += 1) {
    for (let column = left; column <= right; column += 1) {
      const isAnchor = row === top && column === left;
      if (!isAnchor && (formulas[row - 1]?.[column - 1] ?? "") !== "") return false;
    }
  }
  return true;
}

const ENDLESS = { rows: Number.POSITIVE_INFINITY, columns: Number.POSITIVE_INFINITY };

/** How many rows and columns a formula's answer may have; nothing for one value. */
function reachOf(formula: string): Filler["reach"] {
  const ranges = rangesOf(formula);
  if (!FILLS.test(formula.replace(/"(?:[^"]|"")*"/g, '""'))) {
    return ranges.filter(({ within }) => !ONE_VALUE.test(within));
  }
  return ranges.length === 0 ? [ENDLESS] : ranges;
}

interface NamedRange {
  readonly rows: number;
  readonly columns: number;
  /** The function that it is handed to; '' when to none. */
  readonly within: string;
}

const RANGE = /\$?([A-Z]{1,3})\$?(\d*):\$?([A-Z]{1,3})?\$?(\d*)/gi;

/** Ranges of more than one cell that a formula names, also those in quotes. */
function rangesOf(formula: string): readonly NamedRange[] {
  return [...formula.matchAll(RANGE)].map(
    ({ index, 1: from = "", 2: top, 3: to = "", 4: bottom }) => ({
      rows: top === "" || bottom === "" ? Number.POSITIVE_INFINITY : height(top, bottom),
      columns: to === "" ? Number.POSITIVE_INFINITY : Math.abs(number(to) - number(from)) + 1,
      within: functionAround(formula, index),
    }),
  );
}

function height(top: string | undefined, bottom: string | undefined): number {
  return Math.abs(Number(bottom) - Number(top)) + 1;
}

function number(letters: string): number {
  return [...letters.toUpperCase()].reduce((sum, one) => sum * 26 + one.charCodeAt(0) - 64, 0);
}

/** The name of the innermost function whose brackets stand around a character of a formula. */
function functionAround(formula: string, inside: number): string {
  let closed = 0;
  for (let at = inside - 1; at >= 0; at -= 1) {
    if (formula[at] === ")") closed += 1;
    if (formula[at] !== "(") continue;
    if (closed > 0) {
      closed -= 1;
      continue;
    }
    const name = /[\w.]*$/.exec(formula.slice(0, at))?.[0] ?? "";
    // Brackets of arithmetic have no name: those around them count.
    if (name !== "") return name;
  }
  return "";
}
