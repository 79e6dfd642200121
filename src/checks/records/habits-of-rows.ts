import type { Cell } from "../../core";
import type { Dice } from "./dice";
import type { Habit } from "./habit";
import {
  columnIndex,
  replaced,
  roleKey,
  type SheetRow,
  type SheetTable,
  type TableColumn,
  withTables,
} from "./sheet";

/** Puts rows between the rows of each table, so many as a share of them, and one at least. */
function between(
  name: string,
  share: number,
  row: (table: SheetTable, dice: Dice) => SheetRow,
): Habit {
  return {
    name,
    at: {
      between: (sheet, dice) =>
        withTables(sheet, (table) => {
          const before = new Set(dice.some([...table.rows.keys()].slice(1), share));
          return {
            ...table,
            rows: table.rows.flatMap((one, index) =>
              before.has(index) ? [row(table, dice), one] : [one],
            ),
          };
        }),
    },
  };
}

const SECTIONS = [
  "Season 2025",
  "Bay 2",
  "— North house —",
  "Campagne 2024-25",
  "Temporada 2026",
  "March sowings",
  "Musim 2025",
  "Old stock, to be cleared",
  "2024",
  "Safra 2025/26",
];

const blankRows = between("blank rows between", 0.1, () => ({ kind: "other", cells: [] }));

const sectionRows = between("section rows", 0.08, ({ columns }, dice) => {
  // In the first column, or under the batches' names.
  const index = dice.chance(0.8) ? 0 : columnIndex(columns, "batch");
  return { kind: "other", cells: only(columns, index, dice.pick(SECTIONS)) };
});

const headerAgain = between("the header repeated", 0.06, () => ({ kind: "header" }));

/** A row with one cell filled. */
function only(columns: readonly TableColumn[], index: number, text: Cell): Cell[] {
  return columns.map((_, column) => (column === index ? text : ""));
}

const namesLeftOut: Habit = {
  name: "a missing name",
  at: {
    cells: (sheet, dice) => {
      const [table] = sheet.tables;
      if (table === undefined) return sheet;
      const name = columnIndex(table.columns, "batch");
      const lot = columnIndex(table.columns, "fromLot");
      // Without its name a lot can't be known by those that were taken from it.
      const lots = new Set(
        table.rows.flatMap((row) => (row.kind === "batch" ? [row.cells[lot]] : [])),
      );
      const nameable = table.rows.filter(
        (row) => row.kind === "batch" && !lots.has(row.cells[name]),
      );
      const left = new Set(dice.shuffled(nameable).slice(0, dice.between(1, 2)));
      return withTables(sheet, (one) => ({
        ...one,
        rows: one.rows.map((row) =>
          left.has(row) && row.kind === "batch"
            ? { ...row, cells: replaced(row.cells, name, "") }
            : row,
        ),
      }));
    },
  },
};

/** The columns that merged cells stand in: one value for the rows of a group. */
const GROUPS = ["variety", "variety", "place", "rootstock"] as const;

const mergedGroup: Habit = {
  name: "a merged group column",
  at: {
    batches: (sheet, dice) => {
      const key = dice.pick(GROUPS);
      return withTables({ ...sheet, mergedColumn: key }, (table) => {
        const index = columnIndex(table.columns, key);
        const text = (row: SheetRow) => (row.kind === "header" ? "" : String(row.cells[index]));
        // A blank among merged cells would be one of the group's.
        const rows = table.rows.filter((row) => text(row) !== "");
        return { ...table, rows: rows.sort((a, b) => text(a).localeCompare(text(b), "en")) };
      });
    },
    groups: (sheet, dice) => {
      const key = sheet.mergedColumn;
      const startsAnew = dice.chance(0.5);
      return key === null ? sheet : withTables(sheet, (table) => merged(table, key, startsAnew));
    },
  },
};

/** Leaves each value of a group column in its first row alone. */
function merged(table: SheetTable, key: string, startsAnew: boolean): SheetTable {
  const index = columnIndex(table.columns, key);
  let shown: Cell | null = null;
  return {
    ...table,
    rows: table.rows.map((row) => {
      if (row.kind !== "batch") {
        const filled = row.kind === "header" || row.cells.some((cell) => cell !== "");
        // No merged cell reaches across another text in its column.
        const cut = row.kind === "header" || (row.cells[index] ?? "") !== "";
        if (cut || (filled && startsAnew)) shown = null;
        return row;
      }
      const value = row.cells[index] ?? "";
      if (value === shown) return { ...row, cells: replaced(row.cells, index, "") };
      shown = value;
      return row;
    }),
  };
}

export const habitsOfRows: readonly Habit[] = [
  namesLeftOut,
  sectionRows,
  headerAgain,
  blankRows,
  mergedGroup,
];

/** Numbers of a batch's counts, by the table's columns. */
export function countIn(row: SheetRow, column: TableColumn): number | null {
  return row.kind === "batch" ? (row.counts.get(roleKey(column.role)) ?? null) : null;
}
