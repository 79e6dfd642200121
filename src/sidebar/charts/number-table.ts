import { element } from "../controls/element";
import { shortened } from "../controls/shortened";

export interface NumberTable {
  /** Names the table for those who hear it. */
  readonly title: string;
  readonly headers: readonly string[];
  /** The first of each row names the row. */
  readonly rows: readonly (readonly string[])[];
}

/** A plain table in a frame that can be moved sideways, by keyboard too, where it is too wide. */
export function numberTable({ title, headers, rows }: NumberTable): HTMLElement {
  const head = element(
    "tr",
    {},
    ...headers.map((header) => element("th", { scope: "col" }, header)),
  );
  const body = rows.map((row) =>
    element(
      "tr",
      {},
      ...row.map((text, index) =>
        index === 0
          ? element("th", { scope: "row" }, element("bdi", {}, shortened(text)))
          : element("td", {}, element("bdi", {}, shortened(text))),
      ),
    ),
  );
  const table = element(
    "table",
    {},
    element("caption", {}, title),
    element("thead", {}, head),
    element("tbody", {}, ...body),
  );
  return element(
    "div",
    { class: "table-frame", role: "region", "aria-label": title, tabindex: 0 },
    table,
  );
}
