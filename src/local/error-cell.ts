import { ErrorType, ErrorValueObject } from "@univerjs/engine-formula";

/**
 * A cell that shows #ERROR! and keeps the message, as the note on a real cell does.
 * The message travels in the cell's custom data. Not `ErrorValueObject.create`: that one hands
 * out shared instances, and the message would show up at other cells.
 */
export function errorCell(message: string): ErrorValueObject {
  const cell = new ErrorValueObject(ErrorType.ERROR, message);
  cell.withCustomData({ message });
  return cell;
}
