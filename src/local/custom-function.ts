import type { Injector } from "@univerjs/core";
import {
  ALL_IMPLEMENTED_FUNCTIONS_SET,
  ArrayValueObject,
  BaseFunction,
  type BaseValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  type FunctionVariantType,
  IFunctionService,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/engine-formula";
import { toArgument } from "./arguments";
import type { Bundle, CustomFunction } from "./bundle";
import { type ResultCell, resultRows } from "./results";
import { type WallClock, wallClock } from "./wall-clock";

/**
 * Makes every custom function of the add-in callable from the formulas of an engine.
 * @throws Error when one has the name of a built-in function, which a spreadsheet would call instead
 */
export function registerCustomFunctions(injector: Injector, bundle: Bundle): void {
  const clock = wallClock(bundle.settings.spreadsheetZone);
  const service = injector.get(IFunctionService);
  for (const item of bundle.functions) {
    const name = item.name.toUpperCase();
    if (ALL_IMPLEMENTED_FUNCTIONS_SET.has(name))
      throw new Error(`${name} is the name of a built-in function`);
    service.registerExecutors(new AddInFunction(item, bundle, clock));
  }
}

/** A class because the engine's registry accepts nothing else. */
class AddInFunction extends BaseFunction {
  // References instead of arrays of values: only they tell a blank cell and a day from a number.
  override needsReferenceObject = true;

  constructor(
    private readonly item: CustomFunction,
    private readonly bundle: Bundle,
    private readonly clock: WallClock,
  ) {
    super(item.name.toUpperCase());
  }

  /** Never throws: one exception in here would stop every later calculation of the engine. */
  override calculate(...variants: FunctionVariantType[]): BaseValueObject {
    try {
      const parameters = variants.map((one) => toArgument(one, this.bundle.realm, this.clock));
      const rows = resultRows(this.item.name, this.item.call(...parameters));
      const cells = rows.map((row) => row.map((cell) => toValueObject(cell, this.clock)));
      return cells.length === 1 && cells[0]?.length === 1
        ? (cells[0][0] as BaseValueObject)
        : spilled(cells);
    } catch (error) {
      return errorCell(error);
    }
  }
}

function spilled(cells: BaseValueObject[][]): ArrayValueObject {
  return ArrayValueObject.create({
    calculateValueList: cells,
    rowCount: cells.length,
    columnCount: cells[0]?.length ?? 0,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
}

function toValueObject(cell: ResultCell, clock: WallClock): BaseValueObject {
  if (typeof cell === "number") return NumberValueObject.create(cell);
  if (typeof cell === "boolean") return BooleanValueObject.create(cell);
  if (typeof cell === "string") return StringValueObject.create(cell);
  const serial = clock.serialOf(cell.getTime());
  // Without a format of its own a day would show as a number.
  return NumberValueObject.create(
    serial,
    Number.isInteger(serial) ? "yyyy-mm-dd" : "yyyy-mm-dd hh:mm:ss",
  );
}

/**
 * A cell that shows #ERROR! and keeps the message, as the note on a real cell does.
 * The message travels in the cell's custom data. Not `ErrorValueObject.create`: that one hands
 * out shared instances, and the message would show up at other cells.
 */
function errorCell(error: unknown): ErrorValueObject {
  const message =
    typeof error === "object" && error !== null && "message" in error
      ? String(error.message)
      : String(error);
  const cell = new ErrorValueObject(ErrorType.ERROR, message);
  cell.withCustomData({ message });
  return cell;
}
