import type { Grid } from "../cells";
import { lazily } from "../lazily";
import type { ColumnMatch, ColumnSeen, TableKind } from "./column-match";
import {
  type ColumnTarget,
  type HeaderWords,
  targetKey,
  type Understanding,
} from "./column-target";
import { beginsWith, type ColumnValues, columnValues } from "./column-values";
import type { TableArea } from "./find-tables";
import { leftColumns } from "./left-columns";
import { readByParts } from "./read-by-parts";
import { settledByValues } from "./settled-by-values";
import type { Trouble } from "./trouble";

/** A table whose columns were understood, as far as they can be. */
export interface MatchedTable {
  readonly area: TableArea;
  readonly kind: TableKind;
  readonly matches: readonly ColumnMatch[];
  readonly troubles: readonly Trouble[];
}

/**
 * Understands every column of a table. Two columns for one thing, and a column that could be two
 * things, are troubles that name both; the surer is used, else the left one. A column that is left
 * alone is named once, with what it holds and may be.
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
  const valuesOf = (index: number) => columnValues(grid, area.span.first + index, area);
  const byHeaders = kindOf(headers, words, told);
  const doings = byHeaders === "log" ? null : columnOfDoings(headers, { words, told, valuesOf });
  const kind = doings === null ? byHeaders : "log";
  const troubles: Trouble[] = [];
  const seen = headers.map((header, index): ColumnSeen => {
    const column = area.span.first + index;
    const values = lazily(() => valuesOf(index));
    const begins = () => beginsWith(grid, column, area);
    const base = {
      table,
      column,
      header,
      values,
      begins,
      afterDays: 0,
      isLikely: false,
      isOther: false,
      isSaid: false,
    };
    const byHand = told.get(header);
    if (byHand !== undefined) return { ...base, target: byHand, sureness: 4, others: [] };
    if (index === doings) {
      return { ...base, target: { kind: "event", fact: "eventStep" }, sureness: 1, others: [] };
    }
    const ways = words.understand(header).filter((way) => belongsTo(kind, way.target));
    if (ways.length === 0 || saysLess(ways, header, words)) {
      return { ...base, ...readByParts(words.byParts(header), values, kind) };
    }
    const match = { ...base, ...chooseTarget(ways, values) };
    if (isOpen(match, ways)) troubles.push(couldBeTwo(match));
    return match;
  });
  const settled = settledByValues(seen);
  const first = dropSeconds(settled);
  const left = leftColumns(first.matches, { kind, stepKeys: words.stepKeys });
  return {
    area,
    kind,
    matches: left.matches,
    troubles: [...troubles, ...first.troubles, ...left.troubles],
  };
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

/**
 * "Travail fait" over steps, in a table without columns of steps whose batches come again: a log, by what is in
 * it. Which column says what was done, from 0; null where none does, or several.
 */
function columnOfDoings(
  headers: readonly string[],
  {
    words,
    told,
    valuesOf,
  }: {
    readonly words: HeaderWords;
    readonly told: ReadonlyMap<string, ColumnTarget | null>;
    readonly valuesOf: (index: number) => ColumnValues;
  },
): number | null {
  const isOf = (header: string, fact: string) =>
    [...words.understand(header), words.byParts(header)].some(
      (way) => way?.target != null && way.target.kind !== "step" && way.target.fact === fact,
    );
  const hasStep = headers.some((header) => {
    const parts = words.byParts(header);
    const saysStep = words.understand(header)[0]?.target.kind === "step";
    return told.has(header) || saysStep || (parts?.sure === true && parts.target?.kind === "step");
  });
  if (hasStep || !headers.some((header) => isOf(header, "eventDay"))) return null;
  const batch = headers.findIndex((header) => isOf(header, "batch"));
  if (batch < 0) return null;
  const names = valuesOf(batch);
  if (names.different() === names.filled) return null;
  const found = headers.flatMap((header, index) => {
    if (header === "" || words.understand(header).length > 0) return [];
    const { holds, texts, different } = valuesOf(index);
    if (holds !== "text" || different() < 2) return [];
    const steps = texts.filter((text) => words.understand(text)[0]?.target.kind === "step");
    return steps.length * 2 > texts.length ? [index] : [];
  });
  return found.length === 1 ? (found[0] as number) : null;
}

/** "De lote" is no batch, "Entres dari" no variety, though it is once "de" is set aside; nor is "Germ %" a count. */
function saysLess(ways: readonly Understanding[], header: string, words: HeaderWords): boolean {
  if (ways[0]?.sureness === 3 && !header.includes("%")) return false;
  const target = words.byParts(header)?.target;
  return (
    (target === null && header.includes("%")) ||
    (target?.kind === "fact" && (target.fact === "fromLot" || target.fact === "scionSource"))
  );
}

export function belongsTo(kind: TableKind, target: ColumnTarget): boolean {
  return kind === "log" ? target.kind !== "step" : target.kind !== "event";
}

function chooseTarget(
  ways: readonly Understanding[],
  values: () => ColumnValues,
): Pick<ColumnMatch, "target" | "sureness" | "others"> {
  const best = ways[0] as Understanding;
  const cells = ways.some((way) => way.openAspect) ? values().holds : null;
  // What is neither is a count that can't be read.
  const holds = cells === "text" ? "count" : cells;
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

/** Leaves one column for each target, and says so. */
function dropSeconds(matches: readonly ColumnSeen[]): {
  readonly matches: readonly ColumnSeen[];
  readonly troubles: readonly Trouble[];
} {
  const troubles: Trouble[] = [];
  const holder = new Map<string, ColumnSeen>();
  const goesFirst = (one: ColumnSeen, other: ColumnSeen) =>
    one.sureness > other.sureness ||
    (one.sureness === other.sureness && one.afterDays < other.afterDays);
  for (const match of matches) {
    if (match.target === null) continue;
    const key = targetKey(match.target);
    const other = holder.get(key);
    if (other === undefined || goesFirst(match, other)) holder.set(key, match);
  }
  const kept = matches.map((match): ColumnSeen => {
    if (match.target === null) return match;
    const used = holder.get(targetKey(match.target)) as ColumnSeen;
    if (used === match) return match;
    troubles.push({
      row: null,
      column: match.header,
      found: match.header,
      code: "columns-alike",
      used: used.header,
      readAs: match.target,
    });
    return { ...match, target: null, isSaid: true, others: [match.target, ...match.others] };
  });
  return { matches: kept, troubles };
}
