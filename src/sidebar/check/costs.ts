import type { CheckRow } from "../../workbook/sidebar-calls";

type Cost = CheckRow["cost"];

/** What is lost because of a trouble, worst first. */
const COSTS: readonly { readonly cost: Cost; readonly title: string }[] = [
  { cost: 1, title: "The row is not used" },
  { cost: 2, title: "A column is not used" },
  { cost: 3, title: "The cell is not used" },
  { cost: 4, title: "Used, but in doubt" },
  { cost: 5, title: "Used, read as said here" },
];

/** Troubles by what they cost; no empty groups. */
export function groupedByCost(
  rows: readonly CheckRow[],
): readonly { readonly title: string; readonly rows: readonly CheckRow[] }[] {
  return COSTS.map(({ cost, title }) => ({
    title,
    rows: rows.filter((row) => row.cost === cost),
  })).filter((group) => group.rows.length > 0);
}
