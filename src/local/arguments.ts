import { CellValueType, type ICellData, type Nullable } from "@univerjs/core";
import type {
  ArrayValueObject,
  BaseReferenceObject,
  BaseValueObject,
  FunctionVariantType,
} from "@univerjs/engine-formula";
import type { Realm } from "./bundle";
import { errorName, isDatePattern, isErrorText, isTextPattern } from "./cell-kinds";
import type { WallClock } from "./wall-clock";

/** What a cell can hand to a custom function: '' is a blank cell, an error is its text. */
export type ArgumentCell = string | number | boolean | Date;

/**
 * What a custom function gets for one argument of a formula.
 *
 * One cell comes as its value, more cells as rows of values, whole ranges with all their blank
 * tail. Blanks are '', days are `Date`s at midnight of the spreadsheet's zone, errors are text
 * such as "#N/A". Arrays and dates belong to the add-in's own realm.
 * Source: developers.google.com/apps-script/guides/sheets/functions; the text for errors as
 * shipped public add-ons test it.
 */
export function toArgument(variant: FunctionVariantType, realm: Realm, clock: WallClock): unknown {
  const rows = variant.isReferenceObject()
    ? referenceRows(variant as BaseReferenceObject, realm, clock)
    : valueRows(variant as BaseValueObject, realm, clock);
  const first = rows[0];
  if (rows.length === 1 && first?.length === 1) return first[0];
  return realm.array(rows.map((row) => realm.array(row)));
}

function referenceRows(
  reference: BaseReferenceObject,
  realm: Realm,
  clock: WallClock,
): ArgumentCell[][] {
  // Without this the engine would silently read the sheet that the formula stands in.
  if (reference.getForcedSheetName() && !reference.getForcedSheetId()) return [["#REF!"]];
  const { startRow, endRow, startColumn, endColumn } = reference.getRangePosition();
  const rows: ArgumentCell[][] = [];
  for (let row = startRow; row <= endRow; row++) {
    const cells: ArgumentCell[] = [];
    for (let column = startColumn; column <= endColumn; column++) {
      const cell = reference.getCellData(row, column);
      cells.push(
        cellArgument(cell, {
          pattern: () => cellPattern(reference, cell, { row, column }),
          realm,
          clock,
        }),
      );
    }
    rows.push(cells);
  }
  return rows;
}

function cellArgument(
  cell: Nullable<ICellData>,
  {
    pattern,
    realm,
    clock,
  }: { readonly pattern: () => string; readonly realm: Realm; readonly clock: WallClock },
): ArgumentCell {
  const value = cell?.v;
  if (value === null || value === undefined || value === "") return "";
  if (typeof value === "boolean") return value;
  if (cell?.t === CellValueType.BOOLEAN) return Number(value) === 1 || value === "TRUE";
  if (typeof value === "number" || cell?.t === CellValueType.NUMBER) {
    return numberArgument(Number(value), { pattern: pattern(), realm, clock });
  }
  return isErrorText(value) ? errorName(value) : value;
}

/** The format of a cell; a calculated cell carries its own, else the format set by hand counts. */
function cellPattern(
  reference: BaseReferenceObject,
  cell: Nullable<ICellData>,
  { row, column }: { readonly row: number; readonly column: number },
): string {
  const own = cell ? reference.getCurrentStylesData()?.getStyleByCell(cell)?.n?.pattern : undefined;
  return (
    own || reference.getCellPattern(reference.getUnitId(), reference.getSheetId(), row, column)
  );
}

function valueRows(value: BaseValueObject, realm: Realm, clock: WallClock): ArgumentCell[][] {
  if (!value.isArray()) return [[valueArgument(value, realm, clock)]];
  const rows: ArgumentCell[][] = [];
  (value as ArrayValueObject).iterator((item, row, column) => {
    rows[row] ??= [];
    (rows[row] as ArgumentCell[])[column] = valueArgument(item, realm, clock);
  });
  return rows;
}

function valueArgument(
  value: Nullable<BaseValueObject>,
  realm: Realm,
  clock: WallClock,
): ArgumentCell {
  if (!value || value.isNull()) return "";
  if (value.isError()) return errorName(String(value.getValue()));
  if (value.isNumber()) {
    return numberArgument(Number(value.getValue()), { pattern: value.getPattern(), realm, clock });
  }
  return value.getValue() as string | boolean;
}

function numberArgument(
  value: number,
  {
    pattern,
    realm,
    clock,
  }: { readonly pattern: string; readonly realm: Realm; readonly clock: WallClock },
): ArgumentCell {
  if (isTextPattern(pattern)) return String(value);
  return isDatePattern(pattern) ? realm.date(clock.instantOf(value)) : value;
}
