import { asMeant, dittoRows, type Grid } from "../cells";
import { madeOnce } from "../made-once";
import { TEXT_FACTS } from "./batch";
import type { ColumnMatch } from "./column-match";
import type { TableArea } from "./find-tables";
import type { MatchedTable } from "./match-columns";
import type { Trouble } from "./trouble";

/**
 * The grid with the value above in place of each ditto mark (", 〃, do., idem) in a column of names,
 * and how many in which column, said once a column. A word in a table's first row is a name ("Sama");
 * a sign with nothing above stays.
 */
export function withoutDittos(
  grid: Grid,
  tables: readonly MatchedTable[],
): { readonly grid: Grid; readonly troubles: readonly Trouble[] } {
  const troubles: Trouble[] = [];
  const meantIn = new Map<number, Map<number, number>>();
  for (const { area, kind, matches } of tables) {
    for (const match of matches) {
      if (!holdsNames(match, kind === "log")) continue;
      const meant = dittoRows(grid, match.column, rowsOf(area));
      const known = madeOnce(meantIn, match.column, () => new Map());
      for (const [row, above] of meant) known.set(row, above);
      if (meant.size > 0) troubles.push(readAsAbove(match, meant.size));
    }
  }
  return troubles.length === 0 ? { grid, troubles } : { grid: asMeant(grid, meantIn), troubles };
}

function holdsNames({ target, header }: ColumnMatch, isLog: boolean): boolean {
  if (target === null) return header !== "";
  if (target.kind === "event") return target.fact === "eventPerson" || target.fact === "eventStep";
  if (target.kind === "step") return false;
  return TEXT_FACTS.some((fact) => fact === target.fact) || (isLog && target.fact === "batch");
}

/** Rows of a table, but for those that say its header again. */
function* rowsOf({ firstRow, endRow, repeats }: TableArea): Iterable<number> {
  for (let row = firstRow; row < endRow; row += 1) if (!repeats.has(row)) yield row;
}

function readAsAbove({ header }: ColumnMatch, marks: number): Trouble {
  return { row: null, column: header, found: "", code: "ditto-marks", marks };
}
