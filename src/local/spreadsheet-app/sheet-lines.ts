import { Direction, RANGE_TYPE } from "@univerjs/core";
import {
  InsertColByRangeCommand,
  InsertRowByRangeCommand,
  MoveColsCommand,
  MoveRowsCommand,
  RemoveColByRangeCommand,
  RemoveRowByRangeCommand,
} from "@univerjs/sheets";
import type { Area } from "./area";
import type { Execution } from "./execution";
import { wholeArgument } from "./grid-arguments";
import { sheetOf } from "./open-book";
import { areaBehind } from "./range-service";
import { ServiceError } from "./service-error";

type Line = "rows" | "columns";

const COMMANDS = {
  rows: {
    insert: InsertRowByRangeCommand.id,
    move: MoveRowsCommand.id,
    remove: RemoveRowByRangeCommand.id,
    before: Direction.UP,
    after: Direction.DOWN,
    range: RANGE_TYPE.ROW,
  },
  columns: {
    insert: InsertColByRangeCommand.id,
    move: MoveColsCommand.id,
    remove: RemoveColByRangeCommand.id,
    before: Direction.LEFT,
    after: Direction.RIGHT,
    range: RANGE_TYPE.COLUMN,
  },
} as const;

/**
 * The methods of a sheet that put rows and columns in, move them and take them out. Sources: reference pages
 * of Sheet.moveRows and Sheet.moveColumns, whose places are those before the move; of the sentence on
 * non-frozen rows, public projects that met it. From memory: the wording for lines that are not there.
 *
 * Longer than most: what rows and columns have in common is written once, for all eight methods.
 */
export function lineMethods<Self>(
  run: Execution,
  sheetId: string,
  { self, mayChange }: { readonly self: () => Self; readonly mayChange: (area?: Area) => void },
) {
  const { book } = run;
  const tab = () => sheetOf(book, sheetId);
  const all = (line: Line) => (line === "rows" ? tab().getRowCount() : tab().getColumnCount());
  const frozenRows = () => Math.max(0, tab().getFreeze().ySplit ?? 0);
  /**
   * The engine shifts the references of the tab in front, whichever tab rows or columns are put in or
   * out of: so that one is in front meanwhile.
   */
  const reshape = (commandId: string, parameters: Readonly<Record<string, unknown>>): Self => {
    const front = book.workbook.getActiveSheet().getSheetId();
    if (front !== sheetId) book.show(sheetId);
    try {
      book.execute(commandId, { subUnitId: sheetId, ...parameters });
    } finally {
      if (front !== sheetId) book.show(front);
    }
    return self();
  };
  /** Lines counted from 0 over the whole tab, as the engine names them. */
  const block = (line: Line, first: number, count: number) => {
    const last = first + count - 1;
    return line === "rows"
      ? { startRow: first, endRow: last, startColumn: 0, endColumn: all("columns") - 1 }
      : { startRow: 0, endRow: all("rows") - 1, startColumn: first, endColumn: last };
  };
  const mustBeThere = (line: Line, isThere: boolean) => {
    if (!isThere) throw new ServiceError(`Those ${line} are out of bounds.`);
  };
  const inserting = (line: Line, side: "before" | "after", method: string) => {
    const name = `SpreadsheetApp.Sheet.${method}`;
    return (beside: unknown, count: unknown): Self => {
      const at = wholeArgument(beside, name);
      const many = wholeArgument(count, name);
      mustBeThere(line, at >= 1 && at <= all(line) && many >= 1);
      mayChange();
      const range = block(line, side === "before" ? at - 1 : at, many);
      return reshape(COMMANDS[line].insert, { direction: COMMANDS[line][side], range });
    };
  };
  const moving = (line: Line, method: string) => {
    const name = `SpreadsheetApp.Sheet.${method}`;
    return (lines: unknown, destination: unknown): Self => {
      const area = areaBehind(lines, name);
      const [from, many] = line === "rows" ? [area.row, area.rows] : [area.column, area.columns];
      const to = wholeArgument(destination, name) - 1;
      mustBeThere(line, to >= 0 && to <= all(line));
      // Onto or right behind themselves they stay where they are.
      if (to >= from && to <= from + many) return self();
      mayChange();
      const { range: rangeType, move } = COMMANDS[line];
      const moved = { ...block(line, from, many), rangeType };
      const toRange = { ...block(line, to, many), rangeType };
      return reshape(move, { range: moved, fromRange: moved, toRange });
    };
  };
  const deleting = (line: Line, method: string) => {
    const name = `SpreadsheetApp.Sheet.${method}`;
    return (first: unknown, count: unknown): Self => {
      const at = wholeArgument(first, name);
      const many = wholeArgument(count, name);
      mustBeThere(line, at >= 1 && many >= 1 && at + many - 1 <= all(line));
      if (many === all(line)) {
        throw new ServiceError(`You can't delete all the ${line} on the sheet.`);
      }
      if (line === "rows") mustLeaveLoose(at, many);
      const whole = { row: 0, column: 0, rows: all("rows"), columns: all("columns") };
      mayChange(
        line === "rows"
          ? { ...whole, row: at - 1, rows: many }
          : { ...whole, column: at - 1, columns: many },
      );
      return reshape(COMMANDS[line].remove, { range: block(line, at - 1, many) });
    };
  };
  const mustLeaveLoose = (top: number, high: number) => {
    const frozenLeft = frozenRows() - Math.max(0, Math.min(frozenRows(), top + high - 1) - top + 1);
    if (all("rows") - high > frozenLeft) return;
    throw new ServiceError("Sorry, it is not possible to delete all non-frozen rows.");
  };
  return {
    insertRowsAfter: inserting("rows", "after", "insertRowsAfter"),
    insertRowsBefore: inserting("rows", "before", "insertRowsBefore"),
    insertColumnsAfter: inserting("columns", "after", "insertColumnsAfter"),
    insertColumnsBefore: inserting("columns", "before", "insertColumnsBefore"),
    moveRows: moving("rows", "moveRows"),
    moveColumns: moving("columns", "moveColumns"),
    deleteRows: deleting("rows", "deleteRows"),
    deleteColumns: deleting("columns", "deleteColumns"),
  };
}
