import {
  CommandType,
  type ICellData,
  ICommandService,
  type Injector,
  type IRange,
  IUniverInstanceService,
  type Nullable,
  UniverInstanceType,
  type Workbook,
} from "@univerjs/core";
import {
  deserializeRangeWithSheet,
  FormulaDataModel,
  type ISequenceNode,
  LexerTreeBuilder,
  sequenceNodeType,
} from "@univerjs/engine-formula";

/** Which cells change by themselves: those that call a volatile function, and all that read them. */
export interface VolatileCells {
  has(unitId: string, cell: CellAddress): boolean;
}

interface CellAddress {
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
}

interface FormulaCell extends CellAddress {
  readonly formula: string;
}

interface SheetRange {
  readonly sheetId: string;
  readonly range: IRange;
}

/**
 * @param functions names in capitals, such as "NOW". A formula that calls one anywhere is volatile,
 *   also where the call is no argument of the function that asks.
 */
export function volatileCells(injector: Injector, functions: readonly string[]): VolatileCells {
  const call = new RegExp(`(?<![\\w.])(?:${functions.join("|")})\\s*\\(`, "i");
  let known: Map<string, readonly SheetRange[]> | null = null;
  injector.get(ICommandService).onCommandExecuted((command, options) => {
    const calculated = options?.fromFormula || options?.applyFormulaCalculationResult;
    if (command.type === CommandType.MUTATION && !calculated) known = null;
  });
  const volatileIn = (unitId: string): readonly SheetRange[] => {
    known ??= new Map();
    const found = known.get(unitId) ?? volatileRanges(injector, unitId, call);
    known.set(unitId, found);
    return found;
  };
  return {
    has: (unitId, { sheetId, row, column }) =>
      volatileIn(unitId).some(
        ({ sheetId: id, range }) =>
          id === sheetId &&
          row >= range.startRow &&
          row <= range.endRow &&
          column >= range.startColumn &&
          column <= range.endColumn,
      ),
  };
}

function volatileRanges(injector: Injector, unitId: string, call: RegExp): SheetRange[] {
  const workbook = injector
    .get(IUniverInstanceService)
    .getUnit<Workbook>(unitId, UniverInstanceType.UNIVER_SHEET);
  if (!workbook) return [];
  const model = injector.get(FormulaDataModel);
  const cells = formulaCells(workbook, model);
  const isVolatile = ({ formula }: FormulaCell) => call.test(formula.replace(/"[^"]*"/g, '""'));
  let fresh = cells.filter(isVolatile);
  // Most workbooks have none, and are spared the reading of every formula.
  if (fresh.length === 0) return [];
  let rest = cells
    .filter((cell) => !isVolatile(cell))
    .map((cell) => ({ cell, reads: rangesRead(injector.get(LexerTreeBuilder), workbook, cell) }));
  const found: SheetRange[] = [];
  while (fresh.length > 0) {
    const ranges = fresh.map((cell) => filledBy(model, unitId, cell));
    found.push(...ranges);
    const touched = rest.filter(({ reads }) =>
      reads.some((read) => ranges.some((one) => overlap(read, one))),
    );
    rest = rest.filter((one) => !touched.includes(one));
    fresh = touched.map(({ cell }) => cell);
  }
  return found;
}

function formulaCells(workbook: Workbook, model: FormulaDataModel): FormulaCell[] {
  const cells: FormulaCell[] = [];
  for (const sheet of workbook.getSheets()) {
    const sheetId = sheet.getSheetId();
    sheet.getCellMatrix().forValue((row, column, cell: Nullable<ICellData>) => {
      if (!cell?.f && !cell?.si) return;
      const formula =
        cell.f ?? model.getFormulaStringByCell(row, column, sheetId, workbook.getUnitId());
      if (formula) cells.push({ sheetId, row, column, formula });
    });
  }
  return cells;
}

/** The cell of a formula and those that it fills besides. */
function filledBy(model: FormulaDataModel, unitId: string, cell: FormulaCell): SheetRange {
  const { sheetId, row, column } = cell;
  const area = model.getArrayFormulaRange()?.[unitId]?.[sheetId]?.[row]?.[column];
  const own = { startRow: row, endRow: row, startColumn: column, endColumn: column };
  return { sheetId, range: area ?? own };
}

function rangesRead(lexer: LexerTreeBuilder, workbook: Workbook, cell: FormulaCell): SheetRange[] {
  const nodes = lexer.sequenceNodesBuilder(cell.formula) ?? [];
  return nodes
    .filter((node): node is ISequenceNode => typeof node !== "string")
    .filter(({ nodeType }) => nodeType === sequenceNodeType.REFERENCE)
    .flatMap(({ token }) => {
      const { sheetName, range } = deserializeRangeWithSheet(token);
      const sheet = sheetName
        ? workbook.getSheetBySheetName(sheetName)?.getSheetId()
        : cell.sheetId;
      return sheet === undefined ? [] : [{ sheetId: sheet, range }];
    });
}

/** Whole columns and rows have no number where they are open. */
function overlap(one: SheetRange, other: SheetRange): boolean {
  const start = (value: number) => (Number.isNaN(value) ? 0 : value);
  const end = (value: number) => (Number.isNaN(value) ? Number.POSITIVE_INFINITY : value);
  const { range: a } = one;
  const { range: b } = other;
  return (
    one.sheetId === other.sheetId &&
    start(a.startRow) <= end(b.endRow) &&
    start(b.startRow) <= end(a.endRow) &&
    start(a.startColumn) <= end(b.endColumn) &&
    start(b.startColumn) <= end(a.endColumn)
  );
}
