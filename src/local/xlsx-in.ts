import { type CellObject, read, SSF, utils, type WorkSheet } from "@e965/xlsx";
import type { ICellData } from "@univerjs/core";
import { canCalculate } from "./known-formulas";
import { PersonError } from "./person-error";
import { booleanCell, numberCell, type SheetDraft, textCell } from "./workbook-data";

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
  let book: ReturnType<typeof read>;
  try {
    book = read(bytes, {
      type: "array",
      dense: true,
      cellFormula: true,
      cellNF: true,
      cellStyles: true,
      cellDates: false,
      xlfn: true,
    });
  } catch {
    throw new PersonError(`${fileName} is damaged: it can't be opened as an .xlsx workbook`);
  }
  const from1904 = Boolean(book.Workbook?.WBProps?.date1904);
  const drafts = book.SheetNames.map((name, index): SheetDraft => {
    const sheet = book.Sheets[name] as WorkSheet;
    return {
      name,
      rows: readRows(sheet, from1904, addInNames),
      hidden: Boolean(book.Workbook?.Sheets?.[index]?.Hidden),
      widths: Array.from(sheet["!cols"] ?? [], (column) => column?.wpx && Math.round(column.wpx)),
      merges: (sheet["!merges"] ?? []).map(({ s, e }) => ({
        startRow: s.r,
        endRow: e.r,
        startColumn: s.c,
        endColumn: e.c,
      })),
    };
  });
  if (!drafts.some(({ rows }) => rows.some((row) => row.some(Boolean)))) {
    throw new PersonError(`${fileName} is empty: no tab has a filled cell`);
  }
  return drafts;
}

function refuseOtherKinds(bytes: Uint8Array, fileName: string): void {
  const [first, second] = bytes;
  if (first === 0x50 && second === 0x4b) return;
  // The container of old .xls files, and of workbooks with a password.
  if (first === 0xd0 && second === 0xcf) {
    throw new PersonError(
      `${fileName} is an old .xls workbook or has a password: save it as a plain .xlsx workbook first`,
    );
  }
  throw new PersonError(`${fileName} is not an .xlsx workbook, whatever its name says`);
}

function readRows(
  sheet: WorkSheet,
  from1904: boolean,
  addInNames: ReadonlySet<string>,
): (ICellData | undefined)[][] {
  const data: ((CellObject | undefined)[] | undefined)[] = sheet["!data"] ?? [];
  /** Array formulas that the engine will fill out again; their other cells must be empty. */
  const refilled = new Set<string>();
  return Array.from(data, (row, r) =>
    Array.from(row ?? [], (cell, c) => {
      if (!cell) return undefined;
      const value = readValue(cell, from1904);
      if (cell.f && (!cell.F || cell.F.split(":")[0] === utils.encode_cell({ r, c }))) {
        const formula = cell.f.replace(/_xlfn\.(?:_xlws\.)?|_xlws\./g, "");
        if (!canCalculate(formula, addInNames)) return value;
        if (cell.F) refilled.add(cell.F);
        const custom = formula === cell.f ? {} : { custom: { fileFormula: `=${cell.f}` } };
        return { ...value, f: `=${formula}`, ...custom };
      }
      return cell.F && refilled.has(cell.F) ? undefined : value;
    }),
  );
}

function readValue(cell: CellObject, from1904: boolean): ICellData | undefined {
  const pattern = typeof cell.z === "string" && cell.z !== "General" ? cell.z : undefined;
  switch (cell.t) {
    case "n": {
      const isDay = pattern !== undefined && SSF.is_date(pattern);
      const value = Number(cell.v) + (isDay && from1904 ? DAYS_TO_1904 : 0);
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
