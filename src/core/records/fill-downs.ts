import { type Grid, isBlank } from "../cells";
import type { BatchFact } from "../words";
import { TEXT_FACTS } from "./batch";
import { type ColumnPart, type FilledDown, filledDown } from "./fill-down";
import type { MatchedTable } from "./match-columns";
import { batchRows } from "./read-rows";
import type { Trouble } from "./trouble";

/** Facts whose values stand for rows below, and what is to be said of it. */
export interface FillDowns {
  readonly downsOf: ReadonlyMap<MatchedTable, ReadonlyMap<BatchFact, FilledDown>>;
  readonly troubles: readonly Trouble[];
}

/**
 * Which rows of each table take a fact from a row above, because the column has the habit of merged
 * cells; what is done, and what might be meant, is said once a column.
 */
export function fillDowns(grid: Grid, tables: readonly MatchedTable[]): FillDowns {
  const troubles: Trouble[] = [];
  const downsOf = new Map(tables.map((table) => [table, new Map<BatchFact, FilledDown>()]));
  const isBatch = tables.map(({ area, matches }) => batchRows(grid, area, matches));
  for (const name of TEXT_FACTS) {
    // Tables under one another may head the column each in its own words.
    const headers = new Set<string>();
    const own: MatchedTable[] = [];
    const parts: ColumnPart[] = [];
    tables.forEach((table, index) => {
      const { area, kind, matches } = table;
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
        isBatch: isBatch[index] ?? (() => false),
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
    for (const table of own) downsOf.get(table)?.set(name, down);
    for (const column of headers) {
      troubles.push({ ...about(column), code: "filled-from-above", blanks: down.filled });
    }
  }
  return { downsOf, troubles };
}

function about(column: string): Pick<Trouble, "row" | "column" | "found"> {
  return { row: null, column, found: "" };
}
