import * as text from "../../sentences/made/check-page";
import type { CheckRow } from "../../wire/check";

type Cost = CheckRow["cost"];

/** What is lost because of a trouble, worst first. */
const COSTS: readonly { readonly cost: Cost; readonly title: () => string }[] = [
  { cost: 1, title: text.rowLost },
  { cost: 2, title: text.columnLost },
  { cost: 3, title: text.cellLost },
  { cost: 4, title: text.inDoubt },
  { cost: 5, title: text.readAsSaid },
];

/** Troubles by what they cost; no empty groups. */
export function groupedByCost(
  rows: readonly CheckRow[],
): readonly { readonly title: () => string; readonly rows: readonly CheckRow[] }[] {
  return COSTS.map(({ cost, title }) => ({
    title,
    rows: rows.filter((row) => row.cost === cost),
  })).filter((group) => group.rows.length > 0);
}
