import type { Cell } from "../../core";
import type { Dice } from "./dice";
import type { Habit } from "./habit";
import {
  columnIndex,
  roleKey,
  type Sheet,
  type SheetTable,
  type TableColumn,
  withTables,
} from "./sheet";

/** Brings the columns of a table into another order. @param order places in the table as it is */
function reordered(table: SheetTable, order: readonly number[]): SheetTable {
  const inOrder = <T>(items: readonly T[], missing: T) =>
    order.map((index) => items[index] ?? missing);
  return {
    ...table,
    columns: order.map((index) => table.columns[index] as TableColumn),
    rows: table.rows.map((row) =>
      row.kind === "header" ? row : { ...row, cells: inOrder<Cell>(row.cells, "") },
    ),
  };
}

const otherOrder: Habit = {
  name: "columns in another order",
  at: {
    columns: (sheet, dice) => {
      const order = dice.shuffled((sheet.tables[0]?.columns ?? []).map((_, index) => index));
      return withTables(sheet, (table) => reordered(table, order));
    },
  },
};

/** What offices keep beside the batches, with what stands in such a column. */
const OWN_COLUMNS: readonly (readonly [string, (dice: Dice) => Cell])[] = [
  ["Checked", (dice) => dice.chance(0.5)],
  ["Tray size", (dice) => dice.pick([28, 54])],
  ["Photo", (dice) => (dice.chance(0.3) ? `IMG_${dice.between(1000, 9999)}` : "")],
  ["Shelf label", (dice) => dice.pick(["red", "blue", "none"])],
  ["Weather", (dice) => dice.pick(["rain", "dry", "wind", ""])],
  ["Pot cm", (dice) => dice.between(10, 20) / 2],
  ["Office use", () => ""],
  ["Take %", (dice) => dice.between(30, 98) / 100],
  ["Germination %", (dice) => `${dice.between(60, 98)} %`],
  // A margin without a header, blank or scribbled in.
  ["", () => ""],
  ["", (dice) => (dice.chance(0.1) ? "ask K." : "")],
];

const ownColumns: Habit = {
  name: "columns of the office's own",
  at: {
    columns: (sheet, dice) => {
      const own = dice.shuffled(OWN_COLUMNS).slice(0, dice.between(1, 4));
      return own.reduce((made, [header, cell], index) => {
        const name = `${header} ${index}`;
        const at = dice.below((made.tables[0]?.columns.length ?? 0) + 1);
        return withTables(made, (table) =>
          withColumn(table, { name, header, at, cell: () => cell(dice) }),
        );
      }, sheet);
    },
  },
};

function withColumn(
  table: SheetTable,
  {
    name,
    header,
    at,
    cell,
  }: {
    readonly name: string;
    readonly header: string;
    readonly at: number;
    readonly cell: () => Cell;
  },
): SheetTable {
  const column: TableColumn = { role: { kind: "own", name }, upper: header, lower: "" };
  return {
    ...table,
    columns: inserted(table.columns, at, column),
    rows: table.rows.map((row) =>
      row.kind === "header" ? row : { ...row, cells: inserted(row.cells, at, cell()) },
    ),
  };
}

function inserted<T>(items: readonly T[], index: number, item: T): T[] {
  return [...items.slice(0, index), item, ...items.slice(index)];
}

const stackedTables: Habit = {
  name: "tables under one another",
  at: {
    tables: (sheet, dice) => {
      const [table] = sheet.tables;
      if (table === undefined || table.rows.length < 6) return sheet;
      const parts = dice.between(2, 3);
      const cuts = Array.from({ length: parts - 1 }, () => dice.between(2, table.rows.length - 2));
      const ends = [0, ...[...new Set(cuts)].sort((a, b) => a - b), table.rows.length];
      return {
        ...sheet,
        tables: ends.slice(1).map((end, part) => ({
          ...table,
          above: part === 0 ? [] : between(dice),
          rows: table.rows.slice(ends[part], end),
        })),
      };
    },
    columns: (sheet, dice) =>
      dice.chance(0.5)
        ? sheet
        : withTables(sheet, (table) =>
            reordered(table, dice.shuffled(table.columns.map((_, index) => index))),
          ),
  },
};

function between(dice: Dice): Cell[][] {
  const title = dice.pick(["Season 2025", "Bay 2", "Saison 2024-25", "North house", "2026"]);
  return dice.pick<Cell[][]>([[], [[]], [[], []], [[title]], [[], [title]], [[], [title], []]]);
}

export const habitsOfColumns: readonly Habit[] = [ownColumns, otherOrder, stackedTables];

/** Brings each step's count column next to its day column. */
export function paired(sheet: Sheet): Sheet {
  return withTables(sheet, (table) => {
    const order: number[] = [];
    table.columns.forEach(({ role }, index) => {
      if (role.kind === "count" && columnIndex(table.columns, `day of ${role.step}`) !== -1) return;
      order.push(index);
      if (role.kind !== "day") return;
      const count = columnIndex(table.columns, roleKey({ kind: "count", step: role.step }));
      if (count !== -1) order.push(count);
    });
    return reordered(table, order);
  });
}
