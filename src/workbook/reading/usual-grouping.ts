import { FACT_NAMES, type Records } from "../../core";
import { comparableColumns } from "./group-headers";

/** Level of the ranges of take rates, a share. */
export const TAKES_LEVEL = 0.95;

/**
 * What takes are looked at by, the likeliest to tell something first. People are not among it: their
 * takes are set beside one another only where somebody has asked for it.
 */
export const WISHED = ["variety", "rootstock", "scionSource", "place", "method"] as const;

/**
 * The column by which takes are grouped when nobody has said by which: our name of a fact that the
 * table has, else a header of its own that names no people.
 */
export function usualGrouping(records: Records): string {
  const { columns } = records;
  const facts = new Set(
    columns.flatMap(({ target }) => (target?.kind === "fact" ? [target.fact] : [])),
  );
  const fact = WISHED.find((one) => facts.has(one));
  if (fact !== undefined) return FACT_NAMES[fact];
  // A "+" would join two columns.
  const own = comparableColumns(records).find(
    ({ header, people }) =>
      !people &&
      !header.includes("+") &&
      columns.some((one) => one.target === null && one.header === header),
  );
  return own?.header ?? FACT_NAMES.batch;
}
