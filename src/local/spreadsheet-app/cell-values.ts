import { type ICellData, numfmt } from "@univerjs/core";
import { isTextPattern } from "../cell-kinds";
import { isDate } from "../value-kind";
import type { CellReading } from "./cell-reading";
import { cellOfEntry, numberCellOf } from "./cell-writing";
import type { Execution } from "./execution";
import { localeMarks } from "./locale-marks";
import { ServiceError, signatureError } from "./service-error";
import { typedEntry } from "./typed-entry";

/** The longest text that a cell takes. Wording of the message from memory. */
const LONGEST_TEXT = 50_000;

/** A cell as a script gets it: '' when blank, a day as a Date at that wall time of the spreadsheet. */
export function scriptValue(run: Execution, { value, kind }: CellReading): unknown {
  if (value === null) return "";
  return kind === "day" ? run.realm.date(run.clock.instantOf(Number(value))) : value;
}

/** A cell as it shows. Numbers without a format show ten decimals at most. */
export function displayText(run: Execution, { value, kind, pattern }: CellReading): string {
  if (value === null) return "";
  if (kind === "boolean") return value ? "TRUE" : "FALSE";
  if (kind === "text") return String(value);
  const locale = run.settings.locale;
  if (pattern === "" || pattern === "General") {
    const plain = String(Number(Number(value).toFixed(10)));
    return plain.replace(".", localeMarks(locale).decimal);
  }
  return numfmt.format(pattern, value, { locale });
}

/**
 * The cell that a value of a script makes where a cell of a certain format stands.
 * @param pattern the number format there, '' when none
 * @param method for the message, such as "SpreadsheetApp.Range.setValues"
 * @throws ServiceError when no cell can hold the value
 */
export function cellOfValue(
  run: Execution,
  value: unknown,
  { pattern, method }: { readonly pattern: string; readonly method: string },
): ICellData {
  if (value === null || value === undefined) return cellOfEntry({ kind: "blank" }, pattern);
  if (typeof value === "string") {
    if (value.length > LONGEST_TEXT) {
      throw new ServiceError(
        `Your input contains more than the maximum of ${LONGEST_TEXT} characters in a single cell.`,
      );
    }
    return cellOfEntry(
      typedEntry(value, {
        locale: run.settings.locale,
        textFormat: isTextPattern(pattern),
        byScript: true,
        year: run.year(),
      }),
      pattern,
    );
  }
  if (typeof value === "boolean") return cellOfEntry({ kind: "boolean", value }, pattern);
  if (typeof value === "number") {
    return Number.isFinite(value)
      ? numberCellOf(value, pattern, "")
      : cellOfEntry({ kind: "text", text: "#NUM!", forced: false }, pattern);
  }
  if (isDate(value) && !Number.isNaN(value.getTime())) {
    const serial = run.clock.serialOf(value.getTime());
    const day = localeMarks(run.settings.locale).dayPattern;
    return numberCellOf(serial, pattern, Number.isInteger(serial) ? day : `${day} H:mm:ss`);
  }
  throw signatureError([value], method);
}
