import { type Child, element } from "../controls/element";

/** A column of a printed table with what its width fits; text shares what is left. */
export interface SheetColumn {
  /** Said when the table is made. */
  readonly header: () => string;
  readonly width: "text" | "number" | "day" | "window" | "note";
}

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
