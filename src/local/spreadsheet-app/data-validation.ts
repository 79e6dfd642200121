import {
  CellValueType,
  DataValidationErrorStyle,
  DataValidationOperator,
  DataValidationType,
  generateRandomId,
  type ICellData,
  type ISheetDataValidationRule,
} from "@univerjs/core";
import { deserializeListOptions, serializeListOptions } from "@univerjs/sheets";
import {
  AddSheetDataValidationCommand,
  ClearRangeDataValidationCommand,
  SheetDataValidationModel,
} from "@univerjs/sheets-data-validation";
import type { Area } from "./area";
import { type CellChanges, rangeOf, writeCells } from "./cell-writing";
import type { InputRule } from "./input-rule";
import { type OpenBook, sheetOf } from "./open-book";
import { ServiceError } from "./service-error";

const ENGINE_TYPE = {
  checkbox: DataValidationType.CHECKBOX,
  list: DataValidationType.LIST,
  number: DataValidationType.DECIMAL,
  day: DataValidationType.DATE,
} as const;

/** From the first day that a spreadsheet knows to the last. */
const EVER = { operator: DataValidationOperator.BETWEEN, formula1: "1", formula2: "2958465" };

const FORMULAS = {
  // Without these a click would store the numbers 1 and 0.
  checkbox: { formula1: "TRUE", formula2: "FALSE" },
  list: {},
  number: { operator: DataValidationOperator.BETWEEN, formula1: "-1e300", formula2: "1e300" },
  day: EVER,
} as const;

/** A rule for the cells of an area; null for none. */
interface RuleToPut {
  readonly sheetId: string;
  readonly area: Area;
  readonly rule: InputRule | null;
}

/** Puts a rule on every cell of an area in place of those that stand there; null takes them away. */
export function setInputRule(book: OpenBook, { sheetId, area, rule }: RuleToPut): void {
  keepingValues(book, { sheetId, area, change: () => putInputRule(book, { sheetId, area, rule }) });
}

/**
 * The engine puts a value into blank cells that get a box, and the number 0 into unticked boxes of a
 * rule that gives way to another; a spreadsheet leaves what stands there. From memory.
 */
function keepingValues(
  book: OpenBook,
  {
    sheetId,
    area,
    change,
  }: { readonly sheetId: string; readonly area: Area; readonly change: () => void },
): void {
  const cells = sheetOf(book, sheetId).getCellMatrix();
  const stood: [row: number, column: number, cell: ICellData | null][] = [];
  const boxes = book.injector
    .get(SheetDataValidationModel)
    .getRules(book.unitId, sheetId)
    .filter(({ type }) => type === DataValidationType.CHECKBOX);
  for (const range of [rangeOf(area), ...boxes.flatMap(({ ranges }) => ranges)]) {
    for (let row = range.startRow; row <= range.endRow; row++) {
      for (let column = range.startColumn; column <= range.endColumn; column++) {
        const cell = cells.getValue(row, column);
        const isBlank = (cell?.v ?? "") === "" && !cell?.f && !cell?.p;
        if (isBlank) stood.push([row, column, null]);
        else if (cell?.t === CellValueType.BOOLEAN) stood.push([row, column, { ...cell }]);
      }
    }
  }
  change();
  const changes: CellChanges = {};
  for (const [row, column, cell] of stood) {
    const { v, t } = cells.getValue(row, column) ?? {};
    if (cell === null ? (v ?? "") === "" : t === cell.t && v === cell.v) continue;
    changes[row] ??= {};
    (changes[row] as Record<number, ICellData>)[column] = {
      v: cell?.v ?? null,
      t: cell?.t ?? null,
    };
  }
  writeCells(book, { sheetId, area, changes });
}

function putInputRule(book: OpenBook, { sheetId, area, rule }: RuleToPut): void {
  const ranges = [rangeOf(area)];
  if (rule === null) {
    book.execute(ClearRangeDataValidationCommand.id, { subUnitId: sheetId, ranges });
    return;
  }
  const isList = rule.kind === "list";
  book.execute(AddSheetDataValidationCommand.id, {
    subUnitId: sheetId,
    rule: {
      uid: generateRandomId(),
      ranges,
      type: ENGINE_TYPE[rule.kind],
      ...FORMULAS[rule.kind],
      ...(isList ? { formula1: serializeListOptions([...rule.values]) } : {}),
      showDropDown: true,
      allowBlank: true,
      showErrorMessage: !rule.allowInvalid,
      errorStyle: rule.allowInvalid
        ? DataValidationErrorStyle.WARNING
        : DataValidationErrorStyle.STOP,
    },
  });
}

/** Whether a rule of tick boxes stands on a cell. */
export function isCheckbox(
  book: OpenBook,
  {
    sheetId,
    row,
    column,
  }: { readonly sheetId: string; readonly row: number; readonly column: number },
): boolean {
  const rule = book.injector
    .get(SheetDataValidationModel)
    .getRuleByLocation(book.unitId, sheetId, row, column);
  return rule?.type === DataValidationType.CHECKBOX;
}

/**
 * Refuses changes that a strict rule does not accept. Source of the sentence and of its end for a
 * list: public projects that met it.
 * @throws ServiceError that names the first such cell
 */
export function refuseInvalid(
  book: OpenBook,
  {
    sheetId,
    area,
    changes,
    nameOf,
  }: {
    readonly sheetId: string;
    readonly area: Area;
    readonly changes: CellChanges;
    readonly nameOf: (row: number, column: number) => string;
  },
): void {
  const rules = book.injector
    .get(SheetDataValidationModel)
    .getRules(book.unitId, sheetId)
    .filter(({ errorStyle }) => errorStyle === DataValidationErrorStyle.STOP);
  for (const rule of rules) {
    for (const range of rule.ranges) {
      const lastRow = Math.min(range.endRow, area.row + area.rows - 1);
      const lastColumn = Math.min(range.endColumn, area.column + area.columns - 1);
      for (let row = Math.max(range.startRow, area.row); row <= lastRow; row++) {
        for (
          let column = Math.max(range.startColumn, area.column);
          column <= lastColumn;
          column++
        ) {
          const cell = changes[row]?.[column];
          if (!cell || accepts(rule, cell)) continue;
          throw new ServiceError(
            `The data you entered in cell ${nameOf(row, column)} violates the data validation rules set on this cell.${offers(rule)}`,
          );
        }
      }
    }
  }
}

function offers({ type, formula1 }: ISheetDataValidationRule): string {
  if (type !== DataValidationType.LIST) return "";
  return ` Please enter one of the following values: ${deserializeListOptions(formula1 ?? "").join(", ")}.`;
}

function accepts(rule: ISheetDataValidationRule, cell: ICellData): boolean {
  if (cell.f || cell.v === null || cell.v === undefined || cell.v === "") return true;
  if (rule.type === DataValidationType.CHECKBOX) return cell.t === 3;
  const { type } = rule;
  if (type === DataValidationType.DECIMAL || type === DataValidationType.DATE) return cell.t === 2;
  if (type !== DataValidationType.LIST) return true;
  return deserializeListOptions(rule.formula1 ?? "").includes(String(cell.v));
}
