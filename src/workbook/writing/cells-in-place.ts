import { cellName } from "../host/cell-name";
import { type CellValues, valueAt } from "./moved-lines";
import { isAlike, type Landmark, sameValue, type WriteGroup } from "./table-write";

/** Whether the cells still hold what they held: somebody may have put a row or a column in. */
export function landmarksStand(values: CellValues, landmarks: readonly Landmark[]): boolean {
  return landmarks.every(({ row, column, value }) =>
    sameValue(valueAt(values, row, column), value),
  );
}

/** Landmarks that must stand after the write as before it. */
function notWritten({ landmarks, writes }: WriteGroup): readonly Landmark[] {
  const written = new Set(writes.map(cellName));
  return landmarks.filter((one) => !written.has(cellName(one)));
}

/** Whether the cells of a group hold what was written, under their headers and beside their name. */
export function isInPlace(values: CellValues, group: WriteGroup): boolean {
  return (
    landmarksStand(values, notWritten(group)) &&
    group.writes.every(({ row, column, after }) => isAlike(valueAt(values, row, column), after))
  );
}

/** Whether rows were taken out of a tab; not where nobody asked how many it had. */
export function hasFewerRows(
  sheet: GoogleAppsScript.Spreadsheet.Sheet,
  room: number | null,
): boolean {
  return room !== null && sheet.getMaxRows() < room;
}
