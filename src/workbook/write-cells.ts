import { cellName } from "./cell-name";
import { type Grid, type Hit, traceCells, valueAt } from "./moved-cells";
import { movedFormula } from "./moved-formula";
import { runsOf } from "./neighbour-cells";
import { safeText } from "./safe-text";
import { filledFrom, fillers, isBroken, type Snapshot } from "./spilled-cells";
import { type CellWrite, isAlike, type Landmark, sameValue, type WriteGroup } from "./table-write";
import type { CellContent } from "./write-log";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** Cells whose content is not what it was when the write was thought out. */
export class ChangedMeanwhile extends Error {}

/** Cells that were written and could not be put back, since rows have moved or a call failed. */
export class NotPutBack extends Error {}

/** A cell that was written, as the look after the last write found it. */
export interface LandedCell {
  readonly write: CellWrite;
  /** Where it stands by then, such as "F12". */
  readonly cell: string;
}

/** Notes cells that were hit by mistake, before they are put right. @returns notes that they are */
export type NoteHits = (hits: readonly (Hit & HitName)[]) => () => void;

/** Whose cell it was that was hit. */
interface HitName {
  readonly header: string;
  readonly name: string;
}

/**
 * Writes cells of a person's table: all of them, or none. All are looked at in one reading just
 * before, written with no other call in between, and looked at once more when all stand in the sheet.
 * Whatever fails, or does not stand where it should, is put back as it was.
 *
 * @param known the tab's cells as they were read, for its size
 * @param end done when all is written; if it fails, the cells are put back too
 * @throws ChangedMeanwhile when a cell no longer holds what it held; nothing is written then
 * @throws NotPutBack when it failed and could not be undone
 */
export function allOrNone(
  sheet: Sheet,
  groups: readonly WriteGroup[],
  known: Grid,
  end: (landed: readonly LandedCell[]) => void,
  noteHits: NoteHits = () => () => undefined,
): void {
  const writes = groups.flatMap((group) => group.writes);
  const { range, room } = areaOf(sheet, writes, known);
  const formulas = range.getFormulas();
  const before: Snapshot = { values: range.getValues(), formulas };
  refuseChanged(before, groups);
  let begun = false;
  try {
    for (const { row, column, rows } of runsOf(writes)) {
      begun = true;
      sheet.getRange(row, column, rows.length, rows[0]?.length ?? 1).setValues(rows.map(handed));
    }
    // What the sheet refuses, it may refuse only now.
    SpreadsheetApp.flush();
    end(landedCells(sheet, before, range.getValues(), groups, room));
  } catch (error) {
    if (begun) putBack(sheet, before, groups, { because: error, room, noteHits });
    throw error;
  }
}

/** The part of the tab that is known, and the cells that are written. */
function areaOf(sheet: Sheet, writes: readonly CellWrite[], known: Grid): Area {
  const lastRow = Math.max(1, ...writes.map(({ row }) => row));
  const isOfWholeRows = writes.some(({ row }) => isAllWritten(known, row, writes));
  let room: number | null = null;
  if (lastRow > known.length || isOfWholeRows) {
    room = sheet.getMaxRows();
    if (lastRow > room) sheet.insertRowsAfter(room, lastRow - room);
    room = Math.max(room, lastRow);
  }
  const lastColumn = Math.max(1, known[0]?.length ?? 0, ...writes.map(({ column }) => column));
  // What stands below tells a line that has moved down from one that is blank.
  const below = room !== null && room > Math.max(known.length, lastRow) ? 1 : 0;
  const rows = Math.max(known.length, lastRow) + below;
  return { range: sheet.getRange(1, 1, rows, lastColumn), room };
}

/** The part of the tab that is looked at. */
interface Area {
  readonly range: GoogleAppsScript.Spreadsheet.Range;
  /** How many rows the tab has; asked only where rows have nothing beside what is written. */
  readonly room: number | null;
}

function isAllWritten(known: Grid, row: number, writes: readonly CellWrite[]): boolean {
  const written = new Set(writes.filter((one) => one.row === row).map(({ column }) => column));
  return (known[row - 1] ?? []).every((value, at) => value === "" || written.has(at + 1));
}

function refuseChanged(before: Snapshot, groups: readonly WriteGroup[]): void {
  const { values, formulas } = before;
  if (!groups.every(({ landmarks }) => stand(values, landmarks))) throw moved();
  const found = fillers(before);
  for (const { row, column, cell, before: held } of groups.flatMap((group) => group.writes)) {
    if ((formulas[row - 1]?.[column - 1] ?? "") !== "") {
      throw new ChangedMeanwhile(`${cell} holds a formula: it is not written over`);
    }
    const filler = filledFrom(found, before, { row, column });
    if (filler !== null) throw filled(cell, filler);
    if (!sameValue(valueAt(values, row, column), held)) {
      throw changed(cell);
    }
  }
}

function moved(): ChangedMeanwhile {
  return new ChangedMeanwhile("Rows or columns of the table were moved just now: look again");
}

function changed(cell: string): ChangedMeanwhile {
  return new ChangedMeanwhile(`${cell} was changed by somebody else just now: look again`);
}

function swallowed(cell: string): ChangedMeanwhile {
  return new ChangedMeanwhile(
    `${cell} did not take what was written: it may be part of a merged cell`,
  );
}

function filled(cell: string, filler: string): ChangedMeanwhile {
  return new ChangedMeanwhile(
    `${cell} is filled by the formula in ${filler}: it is not written over`,
  );
}

/** Whether the cells still hold what they held: somebody may have put a row or a column in. */
function stand(values: Grid, landmarks: readonly Landmark[]): boolean {
  return landmarks.every(({ row, column, value }) =>
    sameValue(valueAt(values, row, column), value),
  );
}

/** Landmarks that must stand after the write as before it. */
function notWritten({ landmarks, writes }: WriteGroup): readonly Landmark[] {
  const written = new Set(writes.map(cellName));
  return landmarks.filter((one) => !written.has(cellName(one)));
}

/** @throws ChangedMeanwhile when a cell did not take what was written, or another one did */
function landedCells(
  sheet: Sheet,
  before: Snapshot,
  after: Grid,
  groups: readonly WriteGroup[],
  room: number | null,
): readonly LandedCell[] {
  if (!groups.every((group) => isInPlace(after, group))) {
    return landedElsewhere(sheet, before, groups, room);
  }
  const writes = groups.flatMap((group) => group.writes);
  const [first] = writes;
  const broken = fillers(before).find(({ row, column }) => isBroken(valueAt(after, row, column)));
  if (broken !== undefined && first !== undefined) throw filled(first.cell, cellName(broken));
  return writes.map((write) => ({ write, cell: write.cell }));
}

/** Whether the cells of a group hold what was written, under their headers and beside their name. */
function isInPlace(values: Grid, group: WriteGroup): boolean {
  return (
    stand(values, notWritten(group)) &&
    group.writes.every(({ row, column, after }) => isAlike(valueAt(values, row, column), after))
  );
}

function landedElsewhere(
  sheet: Sheet,
  before: Snapshot,
  groups: readonly WriteGroup[],
  room: number | null,
): readonly LandedCell[] {
  const after = sheet.getDataRange().getValues();
  const isShorter = hasFewerRows(sheet, room);
  return groups.flatMap((group) => {
    const { own, hits } = traceCells(before.values, after, group, isShorter);
    if (hits.length > 0) throw moved();
    return group.writes.map((write, at): LandedCell => {
      const place = own[at] ?? null;
      // A cell that was blanked and can't be found is blank, or gone with its row.
      if (place === null && write.after === "") return { write, cell: write.cell };
      if (place === null) throw moved();
      const stands = valueAt(after, place.row, place.column);
      if (isAlike(stands, write.after)) return { write, cell: cellName(place) };
      if (place.row !== write.row || place.column !== write.column) throw moved();
      throw sameValue(stands, write.before) ? swallowed(write.cell) : changed(write.cell);
    });
  });
}

function hasFewerRows(sheet: Sheet, room: number | null): boolean {
  return room !== null && sheet.getMaxRows() < room;
}

/** A cell that gets back what stood in it. */
interface Restore {
  readonly row: number;
  readonly column: number;
  readonly value: CellContent;
  /** '' where it held none. */
  readonly formula: string;
  /** Whether it was shown as a day though it is none. */
  readonly isDay?: boolean;
}

/** Undoes what was written; a cell that somebody has changed since is left as it is. */
function putBack(
  sheet: Sheet,
  before: Snapshot,
  groups: readonly WriteGroup[],
  {
    because,
    room,
    noteHits,
  }: {
    readonly because: unknown;
    readonly room: number | null;
    readonly noteHits: NoteHits;
  },
): void {
  const why = because instanceof Error ? because.message : String(because);
  const cells = groups.flatMap(({ writes }) => writes.map(({ cell }) => cell)).join(", ");
  try {
    const range = sheet.getDataRange();
    const now = range.getValues();
    const isShorter = hasFewerRows(sheet, room);
    const own: Restore[] = [];
    const hits: Hit[] = [];
    for (const group of groups) {
      const traced = isInPlace(now, group)
        ? { own: group.writes, hits: [] }
        : traceCells(before.values, now, group, isShorter);
      group.writes.forEach(({ before: value, after }, at) => {
        const place = traced.own[at] ?? null;
        if (place === null || !isAlike(valueAt(now, place.row, place.column), after)) return;
        own.push({ row: place.row, column: place.column, value, formula: "" });
      });
      hits.push(...traced.hits);
    }
    const noteRight =
      hits.length === 0 ? null : noteHits(hits.map((hit) => named(before, hit, groups)));
    restore(sheet, now, [...own, ...hits.flatMap((hit) => restoreOf(before, hit))]);
    if (hits.some(({ was }) => was === undefined)) throw new Error("not known");
    noteRight?.();
  } catch {
    throw new NotPutBack(`${why}. Only part may be written (${cells}): the write log will say`);
  }
}

function named({ values }: Snapshot, hit: Hit, groups: readonly WriteGroup[]): Hit & HitName {
  const group = groups.find(({ writes }) => writes.includes(hit.write));
  const { from } = hit;
  if (group === undefined || from === null) return { ...hit, header: "", name: "" };
  const header = group.headerRows.map((row) => String(valueAt(values, row, from.column)));
  const name = group.nameColumn === null ? "" : valueAt(values, from.row, group.nameColumn);
  return { ...hit, header: header.join(" ").trim(), name: String(name) };
}

function restoreOf({ formulas }: Snapshot, hit: Hit): Restore[] {
  const { row, column, was, from, write } = hit;
  if (was === undefined) return [];
  const formula = from === null ? "" : (formulas[from.row - 1]?.[from.column - 1] ?? "");
  return [
    {
      ...{ row, column, value: was as CellContent },
      formula: movedFormula(formula, from?.row, row),
      isDay: write.after instanceof Date && !(was instanceof Date),
    },
  ];
}

/** How a cell of the same column is shown that was not written: a day leaves its format behind. */
function formatBeside(
  sheet: Sheet,
  now: Grid,
  cells: readonly Restore[],
  row: number,
  column: number,
): string {
  const taken = new Set(cells.filter((one) => one.column === column).map((one) => one.row));
  const free = Array.from({ length: now.length }, (_, at) => at + 1)
    .filter((one) => !taken.has(one))
    .sort((a, b) => Math.abs(a - row) - Math.abs(b - row) || b - a);
  return sheet.getRange(free[0] ?? row, column).getNumberFormat();
}

/** @throws Error when the cells do not stand as they should afterwards */
function restore(sheet: Sheet, now: Grid, cells: readonly Restore[]): void {
  if (cells.length === 0) return;
  for (const { row, column, value, formula, isDay = false } of [...cells].reverse()) {
    const cell = sheet.getRange(row, column);
    if (isDay) cell.setNumberFormat(formatBeside(sheet, now, cells, row, column));
    if (formula === "") cell.setValue(typeof value === "string" ? safeText(value) : value);
    else cell.setFormula(formula);
  }
  SpreadsheetApp.flush();
  const height = Math.max(now.length, ...cells.map(({ row }) => row));
  const then = sheet.getRange(1, 1, height, now[0]?.length ?? 1).getValues();
  const restored = new Set(cells.map(cellName));
  const rows = new Set(cells.map(({ row }) => row));
  for (const row of rows) {
    const isMoved = (now[row - 1] ?? []).some(
      (value, at) =>
        !restored.has(cellName({ row, column: at + 1 })) &&
        !sameValue(valueAt(then, row, at + 1), value),
    );
    if (isMoved) throw moved();
  }
  for (const { row, column, value, formula } of cells) {
    if (formula === "" && !isAlike(valueAt(then, row, column), value)) throw moved();
  }
}

/** Values as they are handed to the spreadsheet: text stays text. */
function handed(values: readonly CellContent[]): CellContent[] {
  return values.map((value) => (typeof value === "string" ? safeText(value) : value));
}
