import { takeReasons } from "../../core";
import type { Seeds } from "./settings";
import { recordsOf, type UnevenTakes, unevenTakes } from "./uneven-takes";

/** In how many nurseries TAKE_REASONS reads a link, as shares. */
export interface LinkTally {
  /** With who grafted. */
  readonly grafter: number;
  /** With the column Tape. */
  readonly tape: number;
  /** With any column that takes have nothing to do with: all but the variety, and Tape where it tells. */
  readonly anyFalse: number;
}

export function linksOf(kind: UnevenTakes, seeds: Seeds): LinkTally {
  const found = { grafter: 0, tape: 0, anyFalse: 0 };
  const true_ = new Set(["Variety", ...(kind.tapeTells ? ["Tape"] : [])]);
  for (let seed = seeds.first; seed < seeds.first + seeds.count; seed += 1) {
    const { reasons } = takeReasons({ records: recordsOf(unevenTakes(kind, seed)), level: 0.95 });
    // There is no best where no link is clear.
    const linked = reasons.filter(({ best }) => best !== null).map(({ column }) => column);
    if (linked.includes("Grafter")) found.grafter += 1;
    if (linked.includes("Tape")) found.tape += 1;
    if (linked.some((column) => !true_.has(column))) found.anyFalse += 1;
  }
  return {
    grafter: found.grafter / seeds.count,
    tape: found.tape / seeds.count,
    anyFalse: found.anyFalse / seeds.count,
  };
}
