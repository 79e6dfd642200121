import { normalText } from "../words";
import type { BesideTable } from "./beside-fields";

/** What we call each table when a person tells of it: a format, in no language. */
export const BESIDE_NAMES: Readonly<Record<BesideTable, string>> = {
  orders: "Orders",
  crew: "Crew",
  "closed-days": "Closed days",
  places: "Places",
  prices: "Prices",
  germination: "Germination",
};

export const BESIDE_TABLES = Object.keys(BESIDE_NAMES) as readonly BesideTable[];

/** The table that is called so; null where none is. */
export function besideOf(name: string): BesideTable | null {
  const said = normalText(name);
  return BESIDE_TABLES.find((table) => normalText(BESIDE_NAMES[table]) === said) ?? null;
}
