import type { Cell } from "../../core";
import { allLanguages } from "../../core/words/all-languages";
import type { Dice } from "./dice";
import type { Habit } from "./habit";
import { countIn } from "./habits-of-rows";
import {
  columnIndex,
  holdsCounts,
  replaced,
  type SheetRow,
  type SheetTable,
  withTables,
} from "./sheet";

const TOTALS = allLanguages.flatMap((words) => words.totals);

/** Puts a row of sums under each table, and perhaps under parts of it. */
function sums(
  name: string,
  label: (cells: readonly Cell[], table: SheetTable, dice: Dice) => Cell[],
): Habit {
  return {
    name,
    at: {
      between: (sheet, dice) => {
        // Formulas show 0 for a column without numbers; a careful hand leaves it out.
        const showsZero = dice.chance(0.5);
        const parts = dice.chance(0.4);
        return withTables(sheet, (table) => {
          const rows: SheetRow[] = [];
          const all: SheetRow[] = [];
          let part: SheetRow[] = [];
          let sumRows = 0;
          const close = (of: readonly SheetRow[]) => {
            rows.push({ kind: "other", cells: label(sumsOf(of, table, showsZero), table, dice) });
            sumRows += 1;
            part = [];
          };
          table.rows.forEach((row, index) => {
            rows.push(row);
            if (row.kind !== "batch") return;
            all.push(row);
            part.push(row);
            const room = table.rows.length - index > 3;
            if (parts && room && part.length >= 3 && dice.chance(0.2)) close(part);
          });
          // One batch's numbers are no sums to be known by.
          if (part.length >= 2) close(part);
          if (sumRows > 1 && dice.chance(0.7)) close(all);
          return { ...table, rows };
        });
      },
    },
  };
}

function sumsOf(rows: readonly SheetRow[], { columns }: SheetTable, showsZero: boolean): Cell[] {
  return columns.map((column) => {
    if (!holdsCounts(column)) return "";
    const sum = rows.reduce((total, row) => total + (countIn(row, column) ?? 0), 0);
    return sum === 0 && !showsZero ? "" : sum;
  });
}

/** The word stands in the first column, under the names, or left of the first sum. */
const byWord = sums("rows of sums by their word", (cells, { columns }, dice) => {
  const word = dice.pick(TOTALS);
  const text = dice.pick([
    word.charAt(0).toUpperCase() + word.slice(1),
    word.toUpperCase(),
    `${word} Bay 2`,
    `${word}:`,
  ]);
  const firstSum = cells.findIndex((cell) => cell !== "");
  const index = dice.pick([0, columnIndex(columns, "batch"), Math.max(0, firstSum - 1)]);
  return replaced(cells, index, text);
});

const byNumbers = sums("rows of sums by their numbers", (cells) => [...cells]);

export const habitsOfSums: readonly Habit[] = [byWord, { ...byNumbers, not: [byWord.name] }];
