import type { ICellData } from "@univerjs/core";
import { type Area, a1Of } from "./area";
import { cellReader, readArea } from "./cell-reading";
import { cellOfValue, displayText, scriptValue } from "./cell-values";
import { type CellChanges, type ClearedArea, clearArea, writeCells } from "./cell-writing";
import { refuseInvalid } from "./data-validation";
import type { Execution } from "./execution";
import { shownFormula } from "./formula-syntax";
import { gridArgument, textArgument } from "./grid-arguments";
import { sheetOf } from "./open-book";
import { growTables, refuseOtherTypes, refuseProtected } from "./refused-writes";
import { rulesOf } from "./tab-rules";

/** The methods of a range that read and write what its cells hold. */
export function rangeValueMethods<Self>(
  run: Execution,
  {
    sheetId,
    area,
    self,
  }: { readonly sheetId: string; readonly area: Area; readonly self: () => Self },
) {
  const read = () => readArea(run.book, sheetId, area);
  const grid = <Item>(item: (reading: ReturnType<typeof read>[number][number]) => Item) =>
    run.realm.array(read().map((row) => run.realm.array(row.map(item))));
  const firstCell = () => cellReader(run.book, sheetId)(area.row, area.column);

  const write = (valueAt: (row: number, column: number) => unknown, method: string): Self => {
    writeValues(run, { sheetId, area, valueAt, method });
    return self();
  };
  const isFormulaOrBlank = (value: unknown, method: string) => {
    const text = textArgument(value, method);
    // A formula without its "=" is taken as one all the same.
    return text === "" || text.startsWith("=") ? text : `=${text}`;
  };

  return {
    getValues: () => grid((reading) => scriptValue(run, reading)),
    getValue: () => scriptValue(run, firstCell()),
    getDisplayValues: () => grid((reading) => displayText(run, reading)),
    getDisplayValue: () => displayText(run, firstCell()),
    getFormulas: () => grid(({ formula }) => shownFormula(formula, run.settings.locale)),
    getFormula: () => shownFormula(firstCell().formula, run.settings.locale),
    isBlank: () =>
      read().every((row) => row.every(({ value, formula }) => value === null && !formula)),
    setValues(values: unknown) {
      const method = "SpreadsheetApp.Range.setValues";
      const rows = gridArgument(values, area, method);
      return write((row, column) => rows[row]?.[column], method);
    },
    setValue: (value: unknown) => write(() => value, "SpreadsheetApp.Range.setValue"),
    setFormulas(formulas: unknown) {
      const method = "SpreadsheetApp.Range.setFormulas";
      const rows = gridArgument(formulas, area, method);
      return write((row, column) => isFormulaOrBlank(rows[row]?.[column], method), method);
    },
    setFormula(formula: unknown) {
      const method = "SpreadsheetApp.Range.setFormula";
      const text = isFormulaOrBlank(formula, method);
      return write(() => text, method);
    },
    clearContent() {
      attemptToClear(run, { sheetId, area, formatsToo: false });
      return self();
    },
    clear() {
      attemptToClear(run, { sheetId, area, formatsToo: true });
      return self();
    },
  };
}

/**
 * Writes values of a script into an area; either all of them or, when one is refused, none.
 * @throws ServiceError at once for what no cell can hold
 * @param valueAt by row and column counted from 0 within the area
 */
export function writeValues(
  run: Execution,
  {
    sheetId,
    area,
    valueAt,
    method,
  }: {
    readonly sheetId: string;
    readonly area: Area;
    readonly valueAt: (row: number, column: number) => unknown;
    readonly method: string;
  },
): void {
  const standing = cellReader(run.book, sheetId);
  const changes: CellChanges = {};
  for (let row = 0; row < area.rows; row++) {
    const cells: Record<number, ICellData> = {};
    for (let column = 0; column < area.columns; column++) {
      const at = { row: area.row + row, column: area.column + column };
      const { pattern } = standing(at.row, at.column);
      cells[at.column] = cellOfValue(run, valueAt(row, column), { pattern, method });
    }
    changes[area.row + row] = cells;
  }
  const write = () => {
    writeCells(run.book, { sheetId, area, changes: shownOnly(run, sheetId, changes) });
    growTables(run.book, sheetId, area);
  };
  attemptOn(run, {
    sheetId,
    area,
    write,
    check: () => {
      refuseInvalid(run.book, {
        sheetId,
        area,
        changes,
        nameOf: (row, column) => a1Of({ row, column, rows: 1, columns: 1 }),
      });
      refuseOtherTypes(run.book, sheetId, changes);
    },
  });
}

/**
 * The changes without those of rows that a filter hides, where the host is told that these take none.
 * A public project met it (socialpoint-labs/sheetfu-apps-script#21), others write to such rows without
 * a word of it: nobody has looked.
 */
function shownOnly(run: Execution, sheetId: string, changes: CellChanges): CellChanges {
  if (!run.settings.keepsFiltered || run.isOwner) return changes;
  const { filter } = rulesOf(sheetOf(run.book, sheetId));
  if (!filter) return changes;
  const shown = Object.entries(changes).filter(([row]) => !filter.hidden.includes(Number(row)));
  return Object.fromEntries(shown);
}

/** Empties an area. @throws ServiceError as attemptOn */
export function attemptToClear(run: Execution, cleared: ClearedArea): void {
  const { sheetId, area } = cleared;
  attemptOn(run, { sheetId, area, write: () => clearArea(run.book, cleared) });
}

/**
 * Changes cells unless they are protected or another check throws; the script may hear of that only
 * later (see `Refusals`).
 */
export function attemptOn(
  run: Execution,
  {
    sheetId,
    area,
    write,
    check = () => undefined,
  }: {
    readonly sheetId: string;
    readonly area: Area;
    readonly write: () => void;
    readonly check?: () => void;
  },
): void {
  run.refusals.attempt(() => {
    if (!run.isOwner) refuseProtected(run.book, sheetId, area);
    check();
  }, write);
}
