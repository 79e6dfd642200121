import { cellName } from "../host/cell-name";
import { safeText } from "../host/safe-text";
import { hasFewerRows, isInPlace, landmarksStand } from "./cells-in-place";
import { changed, filled, moved, ownFormula, swallowed } from "./changed-meanwhile";
import { traceCells } from "./moved-cells";
import { type CellValues, valueAt } from "./moved-lines";
import { runsOf } from "./neighbour-cells";
import { type NoteHits, putBack } from "./put-back";
import { filledFrom, fillers, isBroken, type Snapshot } from "./spilled-cells";
import { type CellWrite, isAlike, sameValue, type WriteGroup } from "./table-write";
import type { CellContent } from "./write-log";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** A cell that was written, as the look after the last write found it. */
export interface LandedCell {
  readonly write: CellWrite;
  /** Where it stands by then, such as "F12". */
  readonly cell: string;
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
  {
    known,
    end,
    noteHits = () => () => undefined,
  }: {
    readonly known: CellValues;
    readonly end: (landed: readonly LandedCell[]) => void;
    readonly noteHits?: NoteHits;
  },
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
    end(landedCells(sheet, { before, after: range.getValues(), groups, room }));
  } catch (error) {
    if (begun) putBack(sheet, { before, groups, options: { because: error, room, noteHits } });
    throw error;
  }
}

/** The part of the tab that is known, and the cells that are written. */
function areaOf(sheet: Sheet, writes: readonly CellWrite[], known: CellValues): Area {
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

function isAllWritten(known: CellValues, row: number, writes: readonly CellWrite[]): boolean {
  const written = new Set(writes.filter((one) => one.row === row).map(({ column }) => column));
  return (known[row - 1] ?? []).every((value, at) => value === "" || written.has(at + 1));
}

function refuseChanged(before: Snapshot, groups: readonly WriteGroup[]): void {
  const { values, formulas } = before;
  if (!groups.every(({ landmarks }) => landmarksStand(values, landmarks))) throw moved();
  const found = fillers(before);
  for (const { row, column, cell, before: held } of groups.flatMap((group) => group.writes)) {
    if ((formulas[row - 1]?.[column - 1] ?? "") !== "") {
      throw ownFormula(cell);
    }
    const filler = filledFrom(found, before, { row, column });
    if (filler !== null) throw filled(cell, filler);
    if (!sameValue(valueAt(values, row, column), held)) {
      throw changed(cell);
    }
  }
}

/** @throws ChangedMeanwhile when a cell did not take what was written, or another one did */
function landedCells(
  sheet: Sheet,
  {
    before,
    after,
    groups,
    room,
  }: {
    readonly before: Snapshot;
    readonly after: CellValues;
    readonly groups: readonly WriteGroup[];
    readonly room: number | null;
  },
): readonly LandedCell[] {
  if (!groups.every((group) => isInPlace(after, group))) {
    return landedElsewhere(sheet, { before, groups, room });
  }
  const writes = groups.flatMap((group) => group.writes);
  const [first] = writes;
  const broken = fillers(before).find(({ row, column }) => isBroken(valueAt(after, row, column)));
  if (broken !== undefined && first !== undefined) throw filled(first.cell, cellName(broken));
  return writes.map((write) => ({ write, cell: write.cell }));
}

function landedElsewhere(
  sheet: Sheet,
  {
    before,
    groups,
    room,
  }: {
    readonly before: Snapshot;
    readonly groups: readonly WriteGroup[];
    readonly room: number | null;
  },
): readonly LandedCell[] {
  const after = sheet.getDataRange().getValues();
  const isShorter = hasFewerRows(sheet, room);
  return groups.flatMap((group) => {
    const { own, hits } = traceCells(before.values, after, { group, hasFewerRows: isShorter });
    if (hits.length > 0) throw moved();
    return group.writes.map((write, at): LandedCell => {
      const found = own[at] ?? null;
      // A cell that was blanked and can't be found is blank, or gone with its row.
      if (found === null && write.after === "") return { write, cell: write.cell };
      if (found === null) throw moved();
      const stands = valueAt(after, found.row, found.column);
      if (isAlike(stands, write.after)) return { write, cell: cellName(found) };
      if (found.row !== write.row || found.column !== write.column) throw moved();
      throw sameValue(stands, write.before) ? swallowed(write.cell) : changed(write.cell);
    });
  });
}

/** Values as they are handed to the spreadsheet: text stays text. */
function handed(values: readonly CellContent[]): CellContent[] {
  return values.map((value) => (typeof value === "string" ? safeText(value) : value));
}
