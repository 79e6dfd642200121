import { cellText, type Grid } from "../cells";
import { type HeaderWords, targetKey } from "./column-target";
import { headerParts } from "./header-parts";

/** Some neighbouring columns of a grid. */
export interface ColumnSpan {
  readonly first: number;
  /** One past the last. */
  readonly end: number;
}

/** A header of one row, or of two with groups above. */
export interface HeaderBlock {
  /** First row of the header, from 0. */
  readonly row: number;
  readonly height: 1 | 2;
  /** One text for each column of the span: what the header says of it. */
  readonly headers: readonly string[];
  /** How many different things it names. */
  readonly named: number;
  /** Of those, what a log alone has left out: "Date" below "Grafting" names no day of a log. */
  readonly ofBatches: number;
}

/**
 * Reads a row as a header, and it with the row below as a header of groups and parts ("Grafting"
 * over "Date" and "No."), whichever names more.
 *
 * @returns null when the row names fewer than two things, or neither a batch nor a step
 */
export function headerAt(
  grid: Grid,
  row: number,
  { span, words }: { readonly span: ColumnSpan; readonly words: HeaderWords },
): HeaderBlock | null {
  const upper = rowTexts(grid, row, span);
  const one = asHeader({ row, height: 1, headers: upper, words });
  // One text alone is a title, not a row of groups, but for one over a bare "Date" and "No."
  const filled = upper.flatMap((text, at) => (text === "" ? [] : [at]));
  const mayBeGroups =
    filled.length >= 2 ||
    (filled.length === 1 &&
      row + 1 < grid.rowCount &&
      isBare(rowTexts(grid, row + 1, span)[filled[0] as number] as string));
  const two =
    mayBeGroups && row + 1 < grid.rowCount && isAllText(grid, row + 1, span)
      ? asHeader({ row, height: 2, headers: joinedTexts(grid, row, { span, words }), words })
      : null;
  if (two === null) return one;
  // A title or a batch above a header is no row of groups: with it the header says no more.
  const lower = asHeader({
    row: row + 1,
    height: 1,
    headers: rowTexts(grid, row + 1, span),
    words,
  });
  return two.ofBatches > Math.max(one?.ofBatches ?? 0, lower?.ofBatches ?? 0) ? two : one;
}

function saysStep(header: string, words: HeaderWords): boolean {
  const parts = words.byParts(header);
  return parts?.sure === true && parts.target?.kind === "step" && parts.afterDays === 0;
}

/** Whether a header says days or plants, and not of what. */
function isBare(text: string): boolean {
  const { says, unknown, aspect } = headerParts(text);
  return text !== "" && aspect !== null && says.size === 0 && unknown === 0;
}

/** The texts of a row; what is no text is blank. */
export function rowTexts(grid: Grid, row: number, { first, end }: ColumnSpan): string[] {
  const texts: string[] = [];
  for (let column = first; column < end; column += 1) {
    const cell = grid.at(row, column);
    texts.push(typeof cell === "string" ? cellText(cell) : "");
  }
  return texts;
}

function asHeader({
  row,
  height,
  headers,
  words,
}: {
  readonly row: number;
  readonly height: 1 | 2;
  readonly headers: readonly string[];
  readonly words: HeaderWords;
}): HeaderBlock | null {
  const named = new Set<string>();
  const together = new Set<string>();
  let events = 0;
  let telling = false;
  for (const header of headers) {
    if (header === "") continue;
    const best = words.understand(header)[0];
    if (best === undefined) {
      // "Okulasi Hijau Tanggal": two rows that say it together.
      const parts = height === 2 ? words.byParts(header) : null;
      if (parts?.sure && parts.target?.kind === "step") together.add(targetKey(parts.target));
      continue;
    }
    if (best.target.kind === "event" && !named.has(targetKey(best.target))) events += 1;
    named.add(targetKey(best.target));
    telling ||= best.target.kind === "step" || targetKey(best.target) === "fact batch";
  }
  // A log whose column of batches bears a name that we don't know.
  telling ||= named.has("event eventStep") && named.size > 3;
  if (!telling || named.size < 2) return null;
  const more = [...together].filter((key) => !named.has(key)).length;
  return { row, height, headers, named: named.size, ofBatches: named.size - events + more };
}

/** Digits in the lower row mean that it holds a batch already, but for "30 d", "1st", "60 days". */
function isAllText(grid: Grid, row: number, { first, end }: ColumnSpan): boolean {
  let filled = false;
  for (let column = first; column < end; column += 1) {
    const cell = grid.at(row, column);
    if (cell === "") continue;
    if (typeof cell !== "string" || (/\d/.test(cell) && !saysWhen(cell))) return false;
    filled = true;
  }
  return filled;
}

function saysWhen(text: string): boolean {
  const { afterDays, turn, unknown } = headerParts(text);
  return unknown === 0 && (afterDays !== null || turn !== null) && /\p{L}/u.test(text);
}

/** A group's text counts for the columns to its right up to the next, since merged cells hold it once. */
function joinedTexts(
  grid: Grid,
  row: number,
  { span, words }: { readonly span: ColumnSpan; readonly words: HeaderWords },
): string[] {
  const upper = rowTexts(grid, row, span);
  const lower = rowTexts(grid, row + 1, span);
  let group = "";
  return lower.map((part, index) => {
    const own = upper[index] as string;
    if (own !== "") group = own;
    if (part === "") return own;
    const known = (way: string) => words.understand(way).length > 0;
    // A group ends where a column says a step of its own: nothing else shows how far it reaches.
    if (own === "" && headerParts(group).turn === null && saysStep(part, words)) group = "";
    const both = `${group} ${part}`.trim();
    // "Grafting" over "By" names who grafts, though "By" alone is known, too.
    const together = [both, `${part} ${group}`].find(known);
    if (together !== undefined) return together;
    const ofBatch = words.understand(part).some(({ target }) => target.kind !== "event");
    const again = (headerParts(group).turn ?? 1) > 1;
    const byParts = group !== "" && (again || !ofBatch) ? words.byParts(both) : null;
    if (byParts?.sure === true || byParts?.likely === true || (again && byParts !== null)) {
      return both;
    }
    return [part, own].find(known) ?? both;
  });
}
