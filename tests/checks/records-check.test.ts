import { describe, expect, it } from "vitest";
import { allHabits } from "../../src/checks/records/all-habits";
import { cleanTable } from "../../src/checks/records/clean-sheet";
import { combination, sheetsFor } from "../../src/checks/records/combination";
import { checkHabits } from "../../src/checks/records/habit-check";
import { checkRenamed } from "../../src/checks/records/renamed-check";
import { laidOut, type Sheet } from "../../src/checks/records/sheet";

const table = cleanTable(".");
/** Seeds that npm run check:records has, too; it takes thousands of them. */
const SOME = { from: 1, combinations: 150 };

describe("records as offices keep them", () => {
  it("are read as the clean ones, or BATCH_CHECK says where they are not", () => {
    const { silent, identical, combinations } = checkHabits(table, SOME);
    expect(silent).toEqual([]);
    expect(identical / combinations).toBeGreaterThanOrEqual(0.98);
  });
});

/** Every cell of a sheet as text. */
function cellsOf(sheet: Sheet): string {
  const { grid } = laidOut(sheet);
  const rows = Array.from({ length: grid.rowCount }, (_, row) =>
    Array.from({ length: grid.columnCount }, (_, column) => grid.at(row, column)),
  );
  return JSON.stringify(rows);
}

describe("the combinations of habits", () => {
  it("are the same for the same seed, and others for another", () => {
    const cells = (seed: number) => cellsOf(sheetsFor(combination(seed), table).messy);
    expect(combination(3)).toEqual(combination(3));
    expect(cells(3)).toBe(cells(3));
    expect(cells(3)).not.toBe(cells(4));
  });

  it("use every habit, and none twice", () => {
    const { from, combinations } = SOME;
    const drawn = Array.from({ length: combinations }, (_, n) => combination(from + n).habits);
    for (const habits of drawn) expect(new Set(habits).size).toBe(habits.length);
    expect(new Set(drawn.flat())).toEqual(new Set(allHabits.map(({ name }) => name)));
  });

  it("change the sheet, each habit by itself", () => {
    for (const { name } of allHabits) {
      const changed = Array.from({ length: 12 }, (_, seed) => {
        const { clean, messy } = sheetsFor({ seed, batches: 30, habits: [name] }, table);
        return cellsOf(clean) !== cellsOf(messy);
      });
      expect([name, changed.includes(true)]).toEqual([name, true]);
    }
  });

  it("leave the other habits as they were when one is left out", () => {
    const habits = ["columns in another order", "dozens", "title lines above"];
    const withDozens = sheetsFor({ seed: 5, batches: 30, habits }, table).messy;
    const without = sheetsFor(
      { seed: 5, batches: 30, habits: habits.filter((name) => name !== "dozens") },
      table,
    ).messy;
    const [one] = withDozens.tables;
    const [other] = without.tables;
    expect(other?.columns).toEqual(one?.columns);
    expect(other?.above).toEqual(one?.above);
    expect(cellsOf(without)).not.toBe(cellsOf(withDozens));
  });
});

describe("columns in a stranger's words", () => {
  it("are nearly all read right, else asked about, the same for the same seeds", () => {
    const some = { from: 1, sheets: 6 };
    const { columns, right, asked, silent } = checkRenamed(table, some);
    expect(columns).toBe(6 * table.columns.length);
    expect(silent).toEqual([]);
    expect(right + asked).toBe(columns);
    // Which of so few are drawn may be luck; the check itself looks at hundreds.
    expect(right / columns).toBeGreaterThanOrEqual(0.85);
    expect(checkRenamed(table, some)).toEqual(checkRenamed(table, some));
  });
});
