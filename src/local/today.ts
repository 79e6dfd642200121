import {
  BaseFunction,
  type BaseValueObject,
  type IFunctionNames,
  NumberValueObject,
} from "@univerjs/engine-formula";
import { wallClock } from "./wall-clock";

export type FunctionClass = new (name: IFunctionNames) => BaseFunction;

/**
 * TODAY() by the spreadsheet's clock, as the platform has it. The engine's own takes Greenwich's
 * day, which east of the date line is yesterday all morning.
 *
 * @param zone a name of the IANA time zone database
 */
export function todayIn(zone: string): FunctionClass {
  const clock = wallClock(zone);
  /** A class because the engine's registry accepts nothing else. */
  return class TodayOfZone extends BaseFunction {
    override minParams = 0;
    override maxParams = 0;

    override calculate(): BaseValueObject {
      return NumberValueObject.create(Math.floor(clock.serialOf(Date.now())), "yyyy-mm-dd");
    }
  };
}
