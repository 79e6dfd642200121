import type { Area } from "./area";
import type { Execution } from "./execution";
import { sheetOf } from "./open-book";
import { ServiceError } from "./service-error";

/**
 * An area that lies within its tab.
 * Source of the sentences: quoted in public repositories.
 * @throws ServiceError when it does not
 */
export function checkedArea(run: Execution, sheetId: string, area: Area): Area {
  if (area.row < 0) throw new ServiceError("The starting row of the range is too small.");
  if (area.column < 0) throw new ServiceError("The starting column of the range is too small.");
  if (area.rows < 1) {
    throw new ServiceError("The number of rows in the range must be at least 1.");
  }
  if (area.columns < 1) {
    throw new ServiceError("The number of columns in the range must be at least 1.");
  }
  const sheet = sheetOf(run.book, sheetId);
  if (
    area.row + area.rows > sheet.getRowCount() ||
    area.column + area.columns > sheet.getColumnCount()
  ) {
    throw new ServiceError("The coordinates of the range are outside the dimensions of the sheet.");
  }
  return area;
}
