import { cellName } from "../host/cell-name";
import { movedFormula } from "../host/moved-formula";
import { safeText } from "../host/safe-text";
import { troubleSentence } from "../host/writing-error";
import { hasFewerRows, isInPlace } from "./cells-in-place";
import { moved, NotPutBack } from "./changed-meanwhile";
import { type Hit, traceCells } from "./moved-cells";
import { type CellValues, valueAt } from "./moved-lines";
import type { Snapshot } from "./spilled-cells";
import { isAlike, sameValue, type WriteGroup } from "./table-write";
import type { CellContent } from "./write-log";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** Notes cells that were hit by mistake, before they are put right. @returns notes that they are */
export type NoteHits = (hits: readonly (Hit & HitName)[]) => () => void;

/** Whose cell it was that was hit. */
interface HitName {
  readonly header: string;
  readonly name: string;
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
export function putBack(
  sheet: Sheet,
  {
    before,
    groups,
    options: { because, room, noteHits },
  }: {
    readonly before: Snapshot;
    readonly groups: readonly WriteGroup[];
    readonly options: {
      readonly because: unknown;
      readonly room: number | null;
      readonly noteHits: NoteHits;
    };
  },
): void {
  const cells = groups.flatMap(({ writes }) => writes.map(({ cell }) => cell));
  try {
    const range = sheet.getDataRange();
    const now = range.getValues();
    const isShorter = hasFewerRows(sheet, room);
    const own: Restore[] = [];
    const hits: Hit[] = [];
    for (const group of groups) {
      const traced = isInPlace(now, group)
        ? { own: group.writes, hits: [] }
        : traceCells(before.values, now, { group, hasFewerRows: isShorter });
      group.writes.forEach(({ before: value, after }, at) => {
        const found = traced.own[at] ?? null;
        if (found === null || !isAlike(valueAt(now, found.row, found.column), after)) return;
        own.push({ row: found.row, column: found.column, value, formula: "" });
      });
      hits.push(...traced.hits);
    }
    const noteRight =
      hits.length === 0 ? null : noteHits(hits.map((hit) => named(before, hit, groups)));
    restore(sheet, now, [...own, ...hits.flatMap((hit) => restoreOf(before, hit))]);
    if (hits.some(({ was }) => was === undefined)) throw new Error("not known");
    noteRight?.();
  } catch {
    throw new NotPutBack({ code: "notPutBack", because: troubleSentence(because), cells });
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
      row,
      column,
      value: was as CellContent,
      formula: movedFormula(formula, from?.row, row),
      isDay: write.after instanceof Date && !(was instanceof Date),
    },
  ];
}

/** How a cell of the same column is shown that was not written: a day leaves its format behind. */
function formatBeside(
  sheet: Sheet,
  {
    now,
    cells,
    row,
    column,
  }: {
    readonly now: CellValues;
    readonly cells: readonly Restore[];
    readonly row: number;
    readonly column: number;
  },
): string {
  const taken = new Set(cells.filter((one) => one.column === column).map((one) => one.row));
  const free = Array.from({ length: now.length }, (_, at) => at + 1)
    .filter((one) => !taken.has(one))
    .sort((a, b) => Math.abs(a - row) - Math.abs(b - row) || b - a);
  return sheet.getRange(free[0] ?? row, column).getNumberFormat();
}

/** @throws Error when the cells do not stand as they should afterwards */
function restore(sheet: Sheet, now: CellValues, cells: readonly Restore[]): void {
  if (cells.length === 0) return;
  for (const { row, column, value, formula, isDay = false } of [...cells].reverse()) {
    const cell = sheet.getRange(row, column);
    if (isDay) cell.setNumberFormat(formatBeside(sheet, { now, cells, row, column }));
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
