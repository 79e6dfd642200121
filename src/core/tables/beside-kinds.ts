import { normalText } from "../words";
import type { BesideTable } from "./beside-fields";

/** Tables of which a person may tell; samples of seed are only given to their function. */
export type ToldTable = Exclude<BesideTable, "germination">;

/** What we call each table when a person tells of it: a format, in no language. */
export const BESIDE_NAMES: Readonly<Record<ToldTable, string>> = {
  orders: "Orders",
  crew: "Crew",
  "closed-days": "Closed days",
  places: "Places",
  prices: "Prices",
};

export const BESIDE_TABLES = Object.keys(BESIDE_NAMES) as readonly ToldTable[];

/** The table that is called so; null where none is. */
export function besideOf(name: string): ToldTable | null {
  const said = normalText(name);
  return BESIDE_TABLES.find((table) => normalText(BESIDE_NAMES[table]) === said) ?? null;
}
