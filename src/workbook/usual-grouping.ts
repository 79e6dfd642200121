import { FACT_NAMES, type Records } from "../core";

/** Level of the ranges of take rates, a share. */
export const TAKES_LEVEL = 0.95;

/** What takes are looked at by, the likeliest to tell something first. */
const WISHED = ["variety", "rootstock", "grafter", "scionSource", "place", "method"] as const;

/**
 * The column by which takes are grouped when nobody has said by which: our name of a fact that the
 * table has, else a header of its own.
 */
export function usualGrouping({ columns }: Records): string {
  const facts = new Set(
    columns.flatMap(({ target }) => (target?.kind === "fact" ? [target.fact] : [])),
  );
  const fact = WISHED.find((one) => facts.has(one));
  if (fact !== undefined) return FACT_NAMES[fact];
  // A "+" would join two columns.
  const own = columns.find(
    ({ target, header }) => target === null && header !== "" && !header.includes("+"),
  );
  return own?.header ?? FACT_NAMES.batch;
}
