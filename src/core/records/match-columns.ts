import { type Cell, cellText, type Grid, isBlank, readDayText } from "../cells";
import {
  type ColumnTarget,
  type HeaderWords,
  targetKey,
  type Understanding,
} from "./column-target";
import type { TableArea } from "./find-tables";
import type { Trouble } from "./trouble";

/** How one column of a records table was understood. */
export interface ColumnMatch {
  /** Which of the range's tables it belongs to, from 0. */
  readonly table: number;
  /** From 0. */
  readonly column: number;
  /** As it stands in the sheet; of two rows both. */
  readonly header: string;
  /** null when the column is left alone. */
  readonly target: ColumnTarget | null;
  /** 1: chosen by what most of the cells hold; 2: by part of the header; 3: by the whole header; 4: told. */
  readonly sureness: 1 | 2 | 3 | 4;
  /** What else the column could be. */
  readonly others: readonly ColumnTarget[];
}

/** One row a batch, or one row an event. */
export type TableKind = "batches" | "log";

/** A table whose columns were understood, as far as they can be. */
export interface MatchedTable {
  readonly area: TableArea;
  readonly kind: TableKind;
  readonly matches: readonly ColumnMatch[];
  readonly troubles: readonly Trouble[];
}

const CELLS_LOOKED_AT = 60;

/**
 * Understands every column of a table. Two columns for one thing, and a column that could be two
 * things, are troubles that name both; the surer is used, else the left one.
 *
 * @param told what a person has said of columns, by header in the sheet
 */
export function matchColumns(
  grid: Grid,
  area: TableArea,
  {
    table,
    words,
    told,
  }: {
    readonly table: number;
    readonly words: HeaderWords;
    readonly told: ReadonlyMap<string, ColumnTarget | null>;
  },
): MatchedTable {
  const { headers } = area.header;
  const kind = kindOf(headers, words, told);
  const troubles: Trouble[] = [];
  const matches = headers.map((header, index): ColumnMatch => {
    const column = area.span.first + index;
    const byHand = told.get(header);
    if (byHand !== undefined) {
      return { table, column, header, target: byHand, sureness: 4, others: [] };
    }
    const ways = words.understand(header).filter((way) => belongsTo(kind, way));
    const match = { table, column, header, ...chooseTarget(grid, column, { area, ways }) };
    if (header !== "" && words.understand(header).length === 0) {
      if (mostlyHolds(grid, column, area) === "day") troubles.push(unknownDays(header));
    }
    if (isOpen(match, ways)) troubles.push(couldBeTwo(match));
    return match;
  });
  const first = dropSeconds(matches);
  return { area, kind, matches: first.matches, troubles: [...troubles, ...first.troubles] };
}

/** A log names what was done in a column of its own, and has no columns for steps. */
function kindOf(
  headers: readonly string[],
  words: HeaderWords,
  told: ReadonlyMap<string, ColumnTarget | null>,
): TableKind {
  const best = headers.map((header) =>
    told.has(header) ? told.get(header) : words.understand(header)[0]?.target,
  );
  const steps = best.filter((target) => target?.kind === "step").length;
  const events = headers.flatMap((header) => words.understand(header)).map(({ target }) => target);
  const hasStep = events.some((target) => target.kind === "event" && target.fact === "eventStep");
  return hasStep && steps === 0 ? "log" : "batches";
}

function belongsTo(kind: TableKind, { target }: Understanding): boolean {
  return kind === "log" ? target.kind !== "step" : target.kind !== "event";
}

function chooseTarget(
  grid: Grid,
  column: number,
  { area, ways }: { readonly area: TableArea; readonly ways: readonly Understanding[] },
): Pick<ColumnMatch, "target" | "sureness" | "others"> {
  const best = ways[0];
  if (best === undefined) return { target: null, sureness: 1, others: [] };
  const holds = ways.some((way) => way.openAspect) ? mostlyHolds(grid, column, area) : null;
  const chosen =
    ways.find((way) => way.openAspect && aspectOf(way.target) === holds) ??
    (holds === null ? best : (ways.find((way) => !way.openAspect) ?? best));
  return {
    target: chosen.target,
    sureness: holds !== null && chosen.openAspect ? 1 : chosen.sureness,
    others: ways.filter((way) => way !== chosen).map((way) => way.target),
  };
}

function aspectOf(target: ColumnTarget): "day" | "count" | null {
  return target.kind === "step" ? target.what : null;
}

/** Whether the header fits two things equally well, day and plants of one step aside. */
function isOpen({ target, sureness }: ColumnMatch, ways: readonly Understanding[]): boolean {
  if (target === null || sureness === 1) return false;
  const rivals = ways.filter((way) => way.sureness >= sureness && !way.openAspect);
  return rivals.length > 1;
}

function unknownDays(header: string): Trouble {
  return {
    row: null,
    column: header,
    found: header,
    code: "days-of-unknown",
  };
}

function couldBeTwo({ header, target, others }: ColumnMatch): Trouble {
  return {
    row: null,
    column: header,
    found: header,
    code: "column-open",
    readAs: target as ColumnTarget,
    others,
  };
}

/** Whether the first filled cells of a column look like days or like plants; null when it is blank. */
function mostlyHolds(
  grid: Grid,
  column: number,
  { firstRow, endRow, repeats }: TableArea,
): "day" | "count" | null {
  let days = 0;
  let counts = 0;
  for (let row = firstRow; row < endRow && days + counts < CELLS_LOOKED_AT; row += 1) {
    const cell = grid.at(row, column);
    if (isBlank(cell) || repeats.has(row)) continue;
    if (looksLikeDay(cell)) days += 1;
    else counts += 1;
  }
  if (days + counts === 0) return null;
  return days >= counts ? "day" : "count";
}

function looksLikeDay(cell: Cell): boolean {
  if (typeof cell === "object") return true;
  if (typeof cell === "number") return cell > 32000 && cell < 80000;
  const text = cellText(cell);
  return (!NUMBER.test(text) || DAY_IN_DIGITS.test(text)) && readDayText(text).kind !== "unread";
}

const NUMBER = /^[+-]?[\d.,]+$/;
/** "2.5.2026", "2026.05.02", "20260502": days that a number's marks and digits would cover too. */
const DAY_IN_DIGITS = /^(?:\d{1,2}\.\d{1,2}\.(?:\d{2}|\d{4})|\d{4}\.\d\d?\.\d\d?|(?:19|20)\d{6})$/;

/** Leaves one column for each target, and says so. */
function dropSeconds(matches: readonly ColumnMatch[]): Pick<MatchedTable, "matches" | "troubles"> {
  const troubles: Trouble[] = [];
  const holder = new Map<string, ColumnMatch>();
  for (const match of matches) {
    if (match.target === null) continue;
    const key = targetKey(match.target);
    const other = holder.get(key);
    if (other === undefined || match.sureness > other.sureness) holder.set(key, match);
  }
  const kept = matches.map((match): ColumnMatch => {
    if (match.target === null) return match;
    const used = holder.get(targetKey(match.target)) as ColumnMatch;
    if (used === match) return match;
    troubles.push({
      row: null,
      column: match.header,
      found: match.header,
      code: "columns-alike",
      used: used.header,
      readAs: match.target,
    });
    return { ...match, target: null, others: [match.target, ...match.others] };
  });
  return { matches: kept, troubles };
}
