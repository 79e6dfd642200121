import * as text from "../../sentences/made/today-sheet";
import { type Child, element } from "../controls/element";

/** A column of a printed table with what its width fits; text shares what is left. */
export interface SheetColumn {
  /** Said when the table is made. */
  readonly header: () => string;
  readonly width: "text" | "number" | "day" | "window" | "note";
}

/** Columns that every sheet of tasks has. */
export const TASK: SheetColumn = { header: text.task, width: "text" };
export const BATCH: SheetColumn = { header: text.batch, width: "text" };
export const PLANTS: SheetColumn = { header: text.plants, width: "number" };
export const COUNTED: SheetColumn = { header: text.counted, width: "number" };
export const NOTE: SheetColumn = { header: text.note, width: "note" };

/** A printed table under its title, which is printed again on every page that it goes on. */
export function sheetTable(
  title: Child,
  columns: readonly SheetColumn[],
  rows: readonly HTMLElement[],
): HTMLElement {
  return element(
    "table",
    {},
    element("colgroup", {}, ...columns.map(({ width }) => element("col", { class: width }))),
    element(
      "thead",
      {},
      element(
        "tr",
        { class: "place" },
        element("th", { colspan: columns.length, scope: "colgroup" }, title),
      ),
      element("tr", {}, ...columns.map(({ header }) => element("th", { scope: "col" }, header()))),
    ),
    element("tbody", {}, ...rows),
  );
}

/** A blank to write into; what nobody counts has none that would ask for a number. */
export function countBlank(counted: boolean): HTMLElement {
  return counted ? element("td", { class: "blank" }) : element("td", { class: "none" }, "–");
}

/** A number as its words; blank where it is not known. */
export function numberCell(
  value: number | null,
  words: (value: number) => string = String,
): HTMLElement {
  return element("td", { class: "number" }, value === null ? "" : words(value));
}
