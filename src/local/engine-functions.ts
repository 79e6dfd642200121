import { BaseFunction, type BaseValueObject, type IFunctionNames } from "@univerjs/engine-formula";
import { errorCell } from "./error-cell";
import { UNREAD_MESSAGE, UNREAD_NAME } from "./spreadsheet-app/unread-formula";
import { type FunctionClass, todayIn } from "./today";

/** A class because the engine's registry accepts nothing else. */
class UnreadFormula extends BaseFunction {
  override minParams = 1;
  override maxParams = 1;

  override calculate(): BaseValueObject {
    return errorCell(UNREAD_MESSAGE);
  }
}

/**
 * The functions that this host gives the engine besides the add-in's, for the engine's own settings.
 * @param zone a name of the IANA time zone database
 */
export function hostFunctions(zone: string): { function: [FunctionClass, IFunctionNames][] } {
  return {
    function: [
      [todayIn(zone), "TODAY"],
      [UnreadFormula, UNREAD_NAME],
    ],
  };
}
