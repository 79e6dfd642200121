import { type Grid, isBlank } from "../cells/cell";
import type { BatchFact } from "../words/language-words";
import { TEXT_FACTS } from "./batch";
import { type ColumnPart, type FilledDown, filledDown } from "./fill-down";
import type { TableArea } from "./find-tables";
import type { MatchedTable } from "./match-columns";
import { batchRows } from "./read-rows";
import { COST, type Trouble } from "./trouble";

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
      for (const column of headers) troubles.push(leftBlank(column));
      continue;
    }
    for (const table of own) downs[table]?.set(name, down);
    for (const column of headers) troubles.push(filledFromAbove(column, down));
  }
  return downs;
}

function leftBlank(column: string): Trouble {
  return {
    row: null,
    column,
    found: "",
    trouble: "Blank cells stand below a value",
    whatHappens: "They are left blank",
    whatToDo: "Fill them in where the value above is meant",
    cost: COST.doubt,
  };
}

function filledFromAbove(column: string, { filled }: FilledDown): Trouble {
  return {
    row: null,
    column,
    found: `${filled} blank cells`,
    trouble: "One value seems to stand for the rows below it",
    whatHappens: "Blank cells are read as the value above them",
    whatToDo: "Nothing if that is right; else fill the cells in",
    cost: COST.reading,
  };
}
