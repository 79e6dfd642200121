import {
  BaseFunction,
  type BaseValueObject,
  type IFunctionNames,
  NumberValueObject,
} from "@univerjs/engine-formula";
import { wallClock } from "./wall-clock";

type FunctionClass = new (name: IFunctionNames) => BaseFunction;

/**
 * TODAY() by the spreadsheet's clock, as the platform has it, for the engine's own settings. The
 * engine's takes Greenwich's day, which east of the date line is yesterday all morning.
 *
 * @param zone a name of the IANA time zone database
 */
export function todayIn(zone: string): { function: [FunctionClass, IFunctionNames][] } {
  const clock = wallClock(zone);
  /** A class because the engine's registry accepts nothing else. */
  class TodayOfZone extends BaseFunction {
    override minParams = 0;
    override maxParams = 0;

    override calculate(): BaseValueObject {
      return NumberValueObject.create(Math.floor(clock.serialOf(Date.now())), "yyyy-mm-dd");
    }
  }
  return { function: [[TodayOfZone, "TODAY"]] };
}
