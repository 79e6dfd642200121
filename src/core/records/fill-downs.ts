import { type Grid, isBlank } from "../cells";
import type { BatchFact } from "../words";
import { TEXT_FACTS } from "./batch";
import { type ColumnPart, type FilledDown, filledDown } from "./fill-down";
import type { TableArea } from "./find-tables";
import type { MatchedTable } from "./match-columns";
import { batchRows } from "./read-rows";
import type { Trouble } from "./trouble";

/**
 * Which rows of each table take a fact from a row above, because the column has the habit of merged
 * cells; what is done, and what might be meant, is said once a column.
 */
export function fillDowns(
  grid: Grid,
  {
    areas,
    matched,
    troubles,
  }: {
    readonly areas: readonly TableArea[];
    readonly matched: readonly MatchedTable[];
    readonly troubles: Trouble[];
  },
): readonly Map<BatchFact, FilledDown>[] {
  const downs = areas.map(() => new Map<BatchFact, FilledDown>());
  const isBatch = areas.map((area, table) =>
    batchRows(grid, area, (matched[table] as MatchedTable).matches),
  );
  for (const name of TEXT_FACTS) {
    // Tables under one another may head the column each in its own words.
    const headers = new Set<string>();
    const own: number[] = [];
    const parts: ColumnPart[] = [];
    areas.forEach((area, table) => {
      const { kind, matches } = matched[table] as MatchedTable;
      const match = matches.find(({ target }) => target?.kind === "fact" && target.fact === name);
      if (kind === "log" || match === undefined) return;
      headers.add(match.header);
      own.push(table);
      const sown = matches
        .filter(({ target }) => target?.kind === "step" && target.key === "sowing")
        .map(({ column }) => column);
      const nameColumn =
        matches.find(({ target }) => target?.kind === "fact" && target.fact === "batch")?.column ??
        null;
      parts.push({
        area,
        column: match.column,
        isBatch: isBatch[table] ?? (() => false),
        // A batch that was sown in the nursery itself was taken from no lot.
        ...(name === "fromLot"
          ? { isOwn: (row: number) => sown.some((at) => !isBlank(grid.at(row, at))) }
          : {}),
        isNamed: (row) => nameColumn === null || !isBlank(grid.at(row, nameColumn)),
      });
    });
    const down = filledDown(grid, parts);
    if (down === null || (down === "maybe" && name === "fromLot")) continue;
    if (down === "maybe") {
      for (const column of headers) troubles.push({ ...about(column), code: "blanks-below" });
      continue;
    }
    for (const table of own) downs[table]?.set(name, down);
    for (const column of headers) {
      troubles.push({ ...about(column), code: "filled-from-above", blanks: down.filled });
    }
  }
  return downs;
}

function about(column: string): Pick<Trouble, "row" | "column" | "found"> {
  return { row: null, column, found: "" };
}
