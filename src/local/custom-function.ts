import type { Injector } from "@univerjs/core";
import {
  ALL_IMPLEMENTED_FUNCTIONS_SET,
  ArrayValueObject,
  BaseFunction,
  type BaseValueObject,
  BooleanValueObject,
  type FunctionVariantType,
  IFunctionService,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/engine-formula";
import { toArgument } from "./arguments";
import type { Bundle, CustomFunction } from "./bundle";
import { errorCell } from "./error-cell";
import { type ResultCell, resultRows } from "./results";
import { type VolatileCells, volatileCells } from "./volatile-cells";
import { type WallClock, wallClock } from "./wall-clock";

/**
 * A custom function may not read, however far back, what these calculate. Sources: the guide on
 * custom functions, and the sentence as public projects met it ("it blocks the indirect version
 * through a helper cell too"). TODAY() is excepted for import functions (support.google.com);
 * whether it is for custom functions is not known, so a workbook can be opened either way, and the
 * sentence for it is from memory.
 */
const VOLATILE = ["NOW", "RAND", "RANDARRAY", "RANDBETWEEN"] as const;
const REFUSAL =
  "This function is not allowed to reference a cell with NOW(), RAND(), RANDARRAY(), or RANDBETWEEN()";

/**
 * Makes every custom function of the add-in callable from the formulas of an engine.
 * @throws Error when one has the name of a built-in function, which a spreadsheet would call instead
 */
export function registerCustomFunctions(injector: Injector, bundle: Bundle): void {
  const clock = wallClock(bundle.settings.spreadsheetZone);
  const refused = bundle.settings.refusesToday ? [...VOLATILE, "TODAY"] : VOLATILE;
  const volatile = volatileCells(injector, refused);
  const service = injector.get(IFunctionService);
  for (const item of bundle.functions) {
    const name = item.name.toUpperCase();
    if (ALL_IMPLEMENTED_FUNCTIONS_SET.has(name))
      throw new Error(`${name} is the name of a built-in function`);
    service.registerExecutors(new AddInFunction(item, { bundle, clock, volatile }));
  }
}

interface Surroundings {
  readonly bundle: Bundle;
  readonly clock: WallClock;
  readonly volatile: VolatileCells;
}

/** A class because the engine's registry accepts nothing else. */
class AddInFunction extends BaseFunction {
  // References instead of arrays of values: only they tell a blank cell and a day from a number.
  override needsReferenceObject = true;

  constructor(
    private readonly item: CustomFunction,
    private readonly surroundings: Surroundings,
  ) {
    super(item.name.toUpperCase());
  }

  /** Never throws: one exception in here would stop every later calculation of the engine. */
  override calculate(...variants: FunctionVariantType[]): BaseValueObject {
    try {
      const { unitId, subUnitId, row, column } = this;
      const { bundle, clock, volatile } = this.surroundings;
      if (unitId && subUnitId && volatile.has(unitId, { sheetId: subUnitId, row, column })) {
        return errorCell(REFUSAL);
      }
      const parameters = variants.map((one) => toArgument(one, bundle.realm, clock));
      const rows = resultRows(this.item.name, this.item.call(...parameters));
      const cells = rows.map((row) => row.map((cell) => toValueObject(cell, clock)));
      return cells.length === 1 && cells[0]?.length === 1
        ? (cells[0][0] as BaseValueObject)
        : spilled(cells);
    } catch (error) {
      return errorCell(messageOf(error));
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

function messageOf(error: unknown): string {
  return typeof error === "object" && error !== null && "message" in error
    ? String(error.message)
    : String(error);
}
