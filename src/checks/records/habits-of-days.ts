import { type Cell, type CivilDay, type DayOrder, isoDay, serialOfDay } from "../../core";
import { isDayCell } from "../../core/cells/cell";
import { DAY_LOCALES, NAMED_FORMS, namedDay, numbersOf, undatedDay } from "./day-writing";
import type { Dice } from "./dice";
import type { Habit } from "./habit";
import { holdsDays, roleKey, type Sheet, type TableColumn, withCells } from "./sheet";

/** Writes the days of whole columns that still hold plain days. */
function inColumns(
  sheet: Sheet,
  columns: ReadonlySet<string>,
  write: (day: CivilDay, column: TableColumn) => Cell,
): Sheet {
  return withCells(
    sheet,
    (column) => columns.has(roleKey(column.role)),
    (cell, _, column) => (isDayCell(cell) ? write(cell.day, column) : cell),
  );
}

/** Columns in which every day is still a plain day. */
function plainColumns(sheet: Sheet): string[] {
  const touched = new Set<string>();
  withCells(sheet, holdsDays, (cell, _, column) => {
    if (cell !== "" && !isDayCell(cell)) touched.add(roleKey(column.role));
    return cell;
  });
  return (sheet.tables[0]?.columns ?? [])
    .filter(holdsDays)
    .map(({ role }) => roleKey(role))
    .filter((key) => !touched.has(key));
}

function someColumns(sheet: Sheet, dice: Dice, share: number): ReadonlySet<string> {
  const plain = plainColumns(sheet);
  return new Set(plain.length === 0 ? [] : dice.some(plain, share));
}

function asNumbers(
  sheet: Sheet,
  dice: Dice,
  { order, share }: { readonly order: DayOrder; readonly share: number },
): Sheet {
  const how = {
    mark: dice.pick(["/", "/", "-", "."]),
    shortYear: order === "month-first" || dice.chance(0.3),
    padded: dice.chance(0.4),
  };
  const columns = someColumns(sheet, dice, share);
  return inColumns({ ...sheet, dayOrder: order }, columns, (day) => numbersOf(day, order, how));
}

function dayHabit(name: string, change: (sheet: Sheet, dice: Dice) => Sheet): Habit {
  return { name, at: { cells: change } };
}

/** Every day of the sheet, so that no other form has a place beside it. */
const monthFirst: Habit = {
  ...dayHabit("days m/d/yy", (sheet, dice) =>
    asNumbers(sheet, dice, { order: "month-first", share: 1 }),
  ),
  not: [
    "days d/m/yyyy",
    "days with a month's name",
    "days as ISO text",
    "days as serial numbers",
    "days without a year",
  ],
};

export const habitsOfDays: readonly Habit[] = [
  monthFirst,
  dayHabit("days d/m/yyyy", (sheet, dice) =>
    asNumbers(sheet, dice, { order: "day-first", share: 0.3 }),
  ),
  dayHabit("days with a month's name", (sheet, dice) => {
    const locale = dice.pick(DAY_LOCALES);
    const form = dice.pick(NAMED_FORMS);
    const columns = someColumns(sheet, dice, 0.5);
    return inColumns(sheet, columns, (day) => namedDay(day, form, locale));
  }),
  dayHabit("days as ISO text", (sheet, dice) => {
    const mark = dice.pick(["-", "/", ".", ""]);
    const columns = someColumns(sheet, dice, 0.4);
    return inColumns(sheet, columns, (day) => isoDay(day).replaceAll("-", mark));
  }),
  dayHabit("days as serial numbers", (sheet, dice) =>
    inColumns(sheet, someColumns(sheet, dice, 0.3), (day) => serialOfDay(day)),
  ),
  dayHabit("days without a year", (sheet, dice) => {
    const locale = dice.pick(DAY_LOCALES);
    // One column alone: the years of the others tell its own. Sowing may lie months before them.
    const plain = plainColumns(sheet).filter((key) => key !== "closed" && key !== "day of sowing");
    if (plain.length < 8) return sheet;
    return inColumns(sheet, new Set([dice.pick(plain)]), (day) => undatedDay(day, locale));
  }),
  dayHabit("days with a time", (sheet, dice) => {
    const columns = new Set(dice.some((sheet.tables[0]?.columns ?? []).filter(holdsDays), 0.3));
    const keys = new Set([...columns].map(({ role }) => roleKey(role)));
    return withCells(
      sheet,
      (column) => keys.has(roleKey(column.role)),
      (cell) => timed(cell, dice),
    );
  }),
];

function timed(cell: Cell, dice: Dice): Cell {
  if (cell === "" || !dice.chance(0.6)) return cell;
  const hour = dice.between(6, 17);
  const minute = String(dice.between(0, 59)).padStart(2, "0");
  if (typeof cell === "number") return cell + hour / 24;
  const text = isDayCell(cell) ? isoDay(cell.day) : String(cell);
  const times = [` ${hour}:${minute}`, `, ${hour}:${minute}`, ` ${hour}:${minute}:00`];
  if (isDayCell(cell)) times.push(`T${String(hour).padStart(2, "0")}:${minute}:00`);
  return (
    text +
    dice.pick([...times, hour <= 12 ? ` ${hour}:${minute} AM` : ` ${hour - 12}:${minute} pm`])
  );
}
