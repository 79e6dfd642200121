import { type Area, eachCell } from "./areas";
import type { StoredCell } from "./stored-book";

/**
 * Sets those fields of a cell that a mask names, such as "userEnteredFormat.numberFormat"; a named
 * field that the new content lacks is cleared. Format is kept in its first level below the cell.
 */
function setFields(cell: StoredCell, content: StoredCell, mask: string): void {
  for (const path of mask.split(",")) {
    const [field, part] = path.trim().split(".");
    if (field === "userEnteredValue") put(cell, "userEnteredValue", content.userEnteredValue);
    else if (field === "dataValidation") put(cell, "dataValidation", content.dataValidation);
    else if (field === "userEnteredFormat") {
      put(
        cell,
        "userEnteredFormat",
        part === undefined
          ? content.userEnteredFormat
          : { ...cell.userEnteredFormat, [part]: content.userEnteredFormat?.[part] },
      );
    }
    // Notes and the rest are nothing that the job looks at.
  }
}

function put<Field extends keyof StoredCell>(
  cell: StoredCell,
  field: Field,
  content: StoredCell[Field] | undefined,
): void {
  if (content === undefined) delete cell[field];
  else cell[field] = content;
}

/** The cell of a place, made where there is none. */
export function cellAt({ sheet }: Area, row: number, column: number): StoredCell {
  const cells = sheet.rows[row] ?? [];
  sheet.rows[row] = cells;
  const cell = cells[column] ?? {};
  cells[column] = cell;
  return cell;
}

/** Sets fields of every cell of an area. @param contentAt by row and column of the area, from 0 */
export function setAll(
  area: Area,
  mask: string,
  contentAt: (row: number, column: number) => StoredCell | undefined,
): void {
  eachCell(area, (row, column) => {
    // Plain data, since the emulator hands over objects with methods.
    const content = contentAt(row - area.top, column - area.left);
    setFields(cellAt(area, row, column), plain(content ?? {}), mask);
  });
}

function plain(content: StoredCell): StoredCell {
  return JSON.parse(JSON.stringify(content)) as StoredCell;
}
