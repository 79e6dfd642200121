import { type CellObject, read, SSF, utils, type WorkBook, type WorkSheet } from "@e965/xlsx";
import type { ICellData, IRange } from "@univerjs/core";
import * as text from "../sentences/made/file-faults";
import {
  LONGEST_FORMAT,
  LONGEST_FORMULA,
  MOST_COLUMNS,
  MOST_MERGES,
  MOST_ROWS,
  MOST_TABS,
} from "./file-limits";
import { canCalculate } from "./known-formulas";
import { PersonError } from "./person-error";
import { isFilled, type ReadingLimits, readingLimits, withoutBlankEnd } from "./reading-limits";
import {
  booleanCell,
  LEAST_COLUMNS,
  LEAST_ROWS,
  numberCell,
  type SheetDraft,
  textCell,
} from "./workbook-data";
import { valueParts } from "./xlsx-parts";

/** How many days later the day count of a workbook "from 1904" starts. */
const DAYS_TO_1904 = 1462;
/** Format 14 shows a day as the reader's country writes it; here every day is shown one way. */
const LOCAL_DATE = "m/d/yy";

/**
 * The tabs of an .xlsx workbook.
 *
 * Days stay serial numbers with their format, so no time zone can shift them. Formulas that the
 * engine knows are calculated anew, others keep the value in the file.
 *
 * @param bytes the whole file
 * @param fileName for the message
 * @param addInNames names of the add-in's functions, upper case
 * @throws PersonError when the bytes are not an .xlsx workbook, or nothing is in it
 */
export function readXlsx(
  bytes: Uint8Array,
  fileName: string,
  addInNames: ReadonlySet<string>,
): SheetDraft[] {
  refuseOtherKinds(bytes, fileName);
  const book = openBook(valueParts(bytes, fileName), fileName);
  const from1904 = Boolean(book.Workbook?.WBProps?.date1904);
  const limits = readingLimits(fileName);
  const drafts = book.SheetNames.map((name, index): SheetDraft => {
    const sheet = book.Sheets[name];
    // The library leaves out a tab that it can't read, and says nothing.
    if (!sheet) throw new PersonError(text.tabUnread({ file: fileName, tab: name }));
    const rows = readRows(sheet, { name, from1904, addInNames, limits });
    const columns = rows.reduce((most, { length }) => Math.max(most, length), 0);
    return {
      name,
      rows,
      hidden: Boolean(book.Workbook?.Sheets?.[index]?.Hidden),
      widths: Array.from(
        (sheet["!cols"] ?? []).slice(0, columns),
        (column) => column?.wpx && Math.round(column.wpx),
      ),
      merges: readMerges(sheet, {
        rows: rows.length,
        columns,
        file: fileName,
        tab: name,
      }),
    };
  });
  if (!drafts.some(({ rows }) => rows.length > 0)) {
    throw new PersonError(text.emptyTabs({ file: fileName }));
  }
  return drafts;
}

function openBook(parts: Uint8Array, fileName: string): WorkBook {
  let book: WorkBook;
  try {
    book = read(parts, {
      type: "array",
      dense: true,
      cellFormula: true,
      cellNF: true,
      cellStyles: true,
      cellDates: false,
      xlfn: true,
    });
  } catch {
    throw new PersonError(text.badWorkbook({ file: fileName }));
  }
  if (book.SheetNames.length > MOST_TABS) {
    throw new PersonError(
      text.tooManyTabs({ file: fileName, tabs: book.SheetNames.length, most: MOST_TABS }),
    );
  }
  return book;
}

function refuseOtherKinds(bytes: Uint8Array, fileName: string): void {
  const [first, second] = bytes;
  if (first === 0x50 && second === 0x4b) return;
  // The container of old .xls files, and of workbooks with a password.
  if (first === 0xd0 && second === 0xcf) {
    throw new PersonError(text.oldOrLocked({ file: fileName }));
  }
  throw new PersonError(text.notAWorkbook({ file: fileName }));
}

interface TabReading {
  readonly name: string;
  readonly from1904: boolean;
  readonly addInNames: ReadonlySet<string>;
  readonly limits: ReadingLimits;
}

function readRows(sheet: WorkSheet, tab: TabReading): SheetDraft["rows"] {
  const data: ((CellObject | undefined)[] | undefined)[] = sheet["!data"] ?? [];
  const rows: (ICellData | undefined)[][] = [];
  /** Array formulas that the engine will fill out again; their other cells must be empty. */
  const refilled = new Set<string>();
  // By what is there, since one cell far out would make the rest a walk through millions of gaps.
  for (const [r, row] of Object.entries(data)) {
    for (const [c, cell] of Object.entries(row ?? [])) {
      if (!cell) continue;
      const at = { r: Number(r), c: Number(c) };
      const read = readCell({ cell, at, book: tab, refilled });
      if (!read) continue;
      const isInside = at.r < MOST_ROWS && at.c < MOST_COLUMNS;
      if (isInside || isFilled(read)) tab.limits.cell(tab.name, { row: at.r, column: at.c }, read);
      if (isInside) setCell(rows, { row: at.r, column: at.c, cell: read });
    }
  }
  return withoutBlankEnd(rows);
}

/** Rows have no gaps: what walks over them skips no row. */
function setCell(
  rows: (ICellData | undefined)[][],
  {
    row: r,
    column: c,
    cell,
  }: { readonly row: number; readonly column: number; readonly cell: ICellData },
): void {
  while (rows.length <= r) rows.push([]);
  const row = rows[r] as (ICellData | undefined)[];
  while (row.length < c) row.push(undefined);
  row[c] = cell;
}

function readCell({
  cell,
  at,
  book: { from1904, addInNames },
  refilled,
}: {
  readonly cell: CellObject;
  readonly at: { readonly r: number; readonly c: number };
  readonly book: TabReading;
  readonly refilled: Set<string>;
}): ICellData | undefined {
  const value = readValue(cell, from1904);
  const isFirst = !cell.F || cell.F.split(":")[0] === utils.encode_cell(at);
  if (cell.f && cell.f.length <= LONGEST_FORMULA && isFirst) {
    const formula = cell.f.replace(/_xlfn\.(?:_xlws\.)?|_xlws\./g, "");
    if (!canCalculate(formula, addInNames)) return value;
    if (cell.F) refilled.add(cell.F);
    const custom = formula === cell.f ? {} : { custom: { fileFormula: `=${cell.f}` } };
    return { ...value, f: `=${formula}`, ...custom };
  }
  return cell.F && refilled.has(cell.F) ? undefined : value;
}

/** Merged areas, as far as the tab reaches when it is open. */
function readMerges(
  sheet: WorkSheet,
  {
    rows,
    columns,
    file,
    tab,
  }: {
    readonly rows: number;
    readonly columns: number;
    readonly file: string;
    readonly tab: string;
  },
): IRange[] {
  const merges = sheet["!merges"] ?? [];
  if (merges.length > MOST_MERGES) {
    throw new PersonError(text.tooManyMerges({ file, tab, most: MOST_MERGES }));
  }
  const lastRow = Math.max(rows, LEAST_ROWS) - 1;
  const lastColumn = Math.max(columns, LEAST_COLUMNS) - 1;
  return merges
    .map(({ s, e }) => ({
      startRow: s.r,
      endRow: Math.min(e.r, lastRow),
      startColumn: s.c,
      endColumn: Math.min(e.c, lastColumn),
    }))
    .filter((area) => area.endRow >= area.startRow && area.endColumn >= area.startColumn);
}

function readValue(cell: CellObject, from1904: boolean): ICellData | undefined {
  const isFormat = typeof cell.z === "string" && cell.z.length <= LONGEST_FORMAT;
  const pattern = isFormat && cell.z !== "General" ? String(cell.z) : undefined;
  switch (cell.t) {
    case "n": {
      const isDay = pattern !== undefined && SSF.is_date(pattern);
      const value = Number(cell.v) + (isDay && from1904 ? DAYS_TO_1904 : 0);
      if (!Number.isFinite(value)) return textCell("#NUM!");
      return numberCell(value, pattern === LOCAL_DATE ? "yyyy-mm-dd" : pattern);
    }
    case "b":
      return booleanCell(Boolean(cell.v));
    case "e":
      return textCell(cell.w ?? "#VALUE!");
    case "s":
      return cell.v === undefined || cell.v === "" ? undefined : textCell(String(cell.v));
    default:
      return undefined;
  }
}
