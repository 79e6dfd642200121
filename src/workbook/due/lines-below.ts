import { cellName } from "../host/cell-name";
import { movedFormula } from "../host/moved-formula";
import { DUE_COLUMN, DUE_FIRST_ROW, DUE_HEADER_WIDTH, type DueKey } from "../tabs/due-columns";
import type { MovedNote } from "../tabs/notes-in-the-way";
import type { TabCell } from "../tabs/tab-content";
import { carried, type DueEntry, dueCell, isPersonsLine } from "./due-entries";

export type RowCells = Readonly<Partial<Record<DueKey, TabCell>>>;

/** Lines that a person has put below the due list, in its columns. They come along with it. */
export interface LinesBelow {
  /** Those that hold nothing but formulas that show nothing just now. */
  readonly unseen: readonly DueEntry[];
  /** @param row where the line comes to stand, from 1 */
  cellsOf(line: DueEntry, row: number): RowCells;
  /** Those that have come to stand elsewhere, by the first of their cells. */
  moved(tab: string): readonly MovedNote[];
}

/** The sign is ours, in these lines too. */
const KEYS = (Object.keys(DUE_COLUMN) as DueKey[]).filter((key) => key !== "sign");

export function linesBelow(
  sheet: GoogleAppsScript.Spreadsheet.Sheet | null,
  values: readonly (readonly unknown[])[],
  entries: readonly DueEntry[],
): LinesBelow {
  const rows = values.flatMap((cells, at) =>
    at + 1 >= DUE_FIRST_ROW && isPersonsLine(cells) ? [at + 1] : [],
  );
  const first = rows[0] ?? 0;
  const formulas =
    sheet === null || first === 0
      ? []
      : sheet.getRange(first, 1, values.length - first + 1, DUE_HEADER_WIDTH).getFormulas();
  const formulaIn = (row: number, key: DueKey) =>
    formulas[row - first]?.[DUE_COLUMN[key] - 1] ?? "";
  const known = new Set(entries.map(({ row }) => row));
  const moved: { readonly from: number; readonly to: number; readonly column: number }[] = [];
  return {
    unseen: rows
      .filter((row) => !known.has(row) && KEYS.some((key) => formulaIn(row, key) !== ""))
      .map((row) => ({ task: "", batch: "", row, cells: values[row - 1] ?? [] })),
    cellsOf({ row: from, cells }, to) {
      const made = KEYS.map((key) => {
        const formula = formulaIn(from, key);
        const cell: TabCell =
          formula === ""
            ? carried(dueCell(cells, key))
            : { formula: movedFormula(formula, from, to) };
        return [key, cell] as const;
      });
      const filled = made.find(([, cell]) => cell !== null && !("tick" in cell && !cell.tick));
      if (from !== to) moved.push({ from, to, column: filled ? DUE_COLUMN[filled[0]] : 1 });
      return Object.fromEntries(made);
    },
    moved: (tab) =>
      moved.map(({ from, to, column }) => ({
        from: `${tab}!${cellName({ row: from, column })}`,
        to: `${tab}!${cellName({ row: to, column })}`,
      })),
  };
}
