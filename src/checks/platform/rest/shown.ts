import { areaNamed } from "./areas";
import type { StoredBook, StoredCell } from "./stored-book";
import { dateOf, serialOf } from "./typed-in";

/** A value as it is handed out. */
export type Shown = string | number | boolean | Date;

/** https://developers.google.com/sheets/api/reference/rest/v4/ValueRenderOption */
export type RenderOption = "FORMATTED_VALUE" | "UNFORMATTED_VALUE" | "FORMULA";

/** How a cell shows that a custom function has not answered yet. */
const NOT_CALCULATED = "Loading...";

/**
 * What a cell shows; "" for a blank one. The emulator hands scripts whatever comes from here, so that
 * it differs from the API where the platform's methods do: unformatted, a day is a Date and no serial
 * number; as a formula, what is none is "" and no value.
 * https://developers.google.com/apps-script/reference/spreadsheet/range#getvalues and #getformulas
 *
 * Nothing is calculated but the present day and a plain reference to another cell.
 */
export function shown(book: StoredBook, cell: StoredCell | undefined, option: RenderOption): Shown {
  const value = cell?.userEnteredValue;
  if (value === undefined) return "";
  if (option === "FORMULA") return value.formulaValue ?? "";
  const plain =
    value.formulaValue === undefined
      ? (value.numberValue ?? value.stringValue ?? value.boolValue ?? "")
      : calculated(book, value.formulaValue);
  if (option === "FORMATTED_VALUE") return formatted(plain);
  const isDay = DAY_PATTERN.test(cell?.userEnteredFormat?.numberFormat?.pattern ?? "");
  return isDay && typeof plain === "number" ? dateOf(plain) : plain;
}

/** Such as "d mmm yyyy" and "yyyy-mm-dd". */
const DAY_PATTERN = /^[dmy /.-]+$/i;

const TODAY = /^=\s*TODAY\(\s*\)$/i;
/** Such as ='Settings'!$B$3. */
const OTHER_CELL = /^=('(?:[^']|'')+'|\w+)!(\$?[A-Z]+\$?\d+)$/;

function calculated(book: StoredBook, formula: string): Shown {
  if (TODAY.test(formula)) return dateOf(Math.floor(serialOf(new Date())));
  const [, tab, cell] = OTHER_CELL.exec(formula) ?? [];
  if (tab === undefined) return NOT_CALCULATED;
  const { sheet, top, left } = areaNamed(book, `${tab.replaceAll("''", "'")}!${cell}`);
  return shown(book, sheet.rows[top]?.[left], "UNFORMATTED_VALUE");
}

function formatted(value: Shown): string {
  if (value instanceof Date) return value.toISOString().slice(0, 10);
  return typeof value === "boolean" ? String(value).toUpperCase() : String(value);
}
