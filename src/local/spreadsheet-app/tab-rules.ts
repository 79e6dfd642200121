import {
  CommandType,
  type ICommandService,
  type IRange,
  type Nullable,
  type Worksheet,
} from "@univerjs/core";
import {
  InsertColMutation,
  InsertRowMutation,
  RemoveColMutation,
  RemoveRowMutation,
} from "@univerjs/sheets";
import type { Area } from "./area";

/** A chart or a timeline on a tab of its own, or a table of a connected source: tabs without cells. */
export type SheetKind = "GRID" | "OBJECT" | "DATASOURCE";

/** What a typed column of a table takes; a list names the texts. */
export type ColumnType = "number" | "day" | "checkbox" | readonly string[];

/** A structured table of a tab, its header row included. */
export interface Table extends Area {
  /** By column of the tab, counted from 0. */
  readonly types: Readonly<Record<number, ColumnType>>;
  /** Whether a line that is written right below becomes part of it. */
  readonly joins: boolean;
}

/** The one filter of a tab, its header row included. */
export interface TabFilter extends Area {
  /** Texts that are hidden, by column of the tab, counted from 0. */
  readonly hides: Readonly<Record<number, readonly string[]>>;
  /** Rows of the tab that it hides, counted from 0. */
  readonly hidden: readonly number[];
}

/** What a tab of the spreadsheet has and the engine doesn't know of. */
export interface TabRules {
  readonly kind: SheetKind;
  /** Whether the running user may change nothing of the tab. */
  readonly isProtected: boolean;
  /** Cells that the running user may not change. */
  readonly protectedAreas: readonly Area[];
  readonly tables: readonly Table[];
  readonly filter: TabFilter | null;
}

const NONE: TabRules = {
  kind: "GRID",
  isProtected: false,
  protectedAreas: [],
  tables: [],
  filter: null,
};
const KEY = "tabRules";

/** They lie in the engine's own data of the tab, so that a saved workbook keeps them. */
export function rulesOf(sheet: Worksheet): TabRules {
  const rules: Partial<TabRules> | undefined = sheet.getCustomMetadata()?.[KEY];
  return rules ? { ...NONE, ...rules } : NONE;
}

/** Puts rules of a tab in the place of those that it has; those that are left out stay. */
export function changeRules(sheet: Worksheet, change: Partial<TabRules>): void {
  sheet.setCustomMetadata({
    ...sheet.getCustomMetadata(),
    [KEY]: { ...rulesOf(sheet), ...change },
  });
}

/** The data of a tab that has rules from the start. */
export function ruledTab(rules: Partial<TabRules>): Readonly<Record<string, unknown>> {
  return { [KEY]: rules };
}

/** Lets protected cells and tables move as rows and columns come and go. */
export function moveRulesWithCells(
  commands: ICommandService,
  sheetOf: (sheetId: string) => Nullable<Worksheet>,
): void {
  const moves: Readonly<Record<string, (area: Area, range: IRange) => Area | null>> = {
    [InsertRowMutation.id]: (area, range) => ({ ...area, ...put(area.row, rowsOf(area, range)) }),
    [RemoveRowMutation.id]: (area, range) =>
      some({ ...area, ...taken(area.row, rowsOf(area, range)) }),
    [InsertColMutation.id]: (area, range) => ({
      ...area,
      ...put(area.column, columnsOf(area, range)),
    }),
    [RemoveColMutation.id]: (area, range) =>
      some({ ...area, ...taken(area.column, columnsOf(area, range)) }),
  };
  commands.onCommandExecuted((command) => {
    const move = command.type === CommandType.MUTATION ? moves[command.id] : undefined;
    if (!move) return;
    const { subUnitId, range } = command.params as { subUnitId: string; range: IRange };
    const sheet = sheetOf(subUnitId);
    if (!sheet) return;
    const { protectedAreas, tables, filter } = rulesOf(sheet);
    if (protectedAreas.length + tables.length === 0 && !filter) return;
    changeRules(sheet, {
      filter: filter && movedFilter(filter, (area) => move(area, range)),
      protectedAreas: protectedAreas.flatMap((area) => move(area, range) ?? []),
      // The types go with the columns only as long as none comes or goes left of them.
      tables: tables.flatMap((table) => {
        const area = move(table, range);
        return area ? [{ ...table, ...area }] : [];
      }),
    });
  });
}

/** A filter moves as a whole; what its columns hide goes with them only where none comes or goes. */
function movedFilter(filter: TabFilter, move: (area: Area) => Area | null): TabFilter | null {
  const area = move(filter);
  if (!area) return null;
  const { column } = filter;
  const hidden = filter.hidden.flatMap(
    (row) => move({ row, column, rows: 1, columns: 1 })?.row ?? [],
  );
  return { ...filter, ...area, hidden };
}

type Names = readonly ["row", "rows"] | readonly ["column", "columns"];

/** How many rows, or columns, an area has, and those that are put in or taken, from 0. */
interface Slices {
  readonly size: number;
  readonly start: number;
  readonly end: number;
  readonly slices: Names;
}

const rowsOf = (area: Area, { startRow, endRow }: IRange): Slices => ({
  size: area.rows,
  start: startRow,
  end: endRow,
  slices: ["row", "rows"],
});
const columnsOf = (area: Area, { startColumn, endColumn }: IRange): Slices => ({
  size: area.columns,
  start: startColumn,
  end: endColumn,
  slices: ["column", "columns"],
});

function put(first: number, { size, start, end, slices: [a, b] }: Slices) {
  const count = end - start + 1;
  if (start <= first) return { [a]: first + count };
  return start < first + size ? { [b]: size + count } : {};
}

function taken(first: number, { size, start, end, slices: [a, b] }: Slices) {
  const before = Math.max(0, Math.min(end, first - 1) - start + 1);
  const within = Math.max(0, Math.min(end, first + size - 1) - Math.max(start, first) + 1);
  return { [a]: first - before, [b]: size - within };
}

function some(area: Area): Area | null {
  return area.rows > 0 && area.columns > 0 ? area : null;
}
