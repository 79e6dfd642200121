import { readDayText } from "../../core/cells/read-day-text";
import { allHabits, habitNamed } from "./all-habits";
import { type CleanTable, cleanSheet } from "./clean-sheet";
import { type Dice, dice } from "./dice";
import { type Habit, PHASES, withHabits } from "./habit";
import { holdsDays, type Sheet } from "./sheet";

/** A messy sheet that can be made again: some batches, and the habits put upon them. */
export interface Combination {
  readonly seed: number;
  readonly batches: number;
  readonly habits: readonly string[];
}

const MOST_HABITS = 9;

/** Draws a combination. @param seed the same seed draws the same */
export function combination(seed: number): Combination {
  const rolls = dice(seed).part("combination");
  const batches = rolls.between(20, 40);
  const wanted = rolls.between(1, MOST_HABITS);
  const habits: Habit[] = [];
  for (const habit of rolls.shuffled(allHabits)) {
    if (habits.length < wanted && habits.every((other) => goTogether(habit, other))) {
      habits.push(habit);
    }
  }
  const names = new Set(habits.map(({ name }) => name));
  return {
    seed,
    batches,
    habits: allHabits.map(({ name }) => name).filter((name) => names.has(name)),
  };
}

function goTogether(one: Habit, other: Habit): boolean {
  return !one.not?.includes(other.name) && !other.not?.includes(one.name);
}

/** The sheet of a combination, clean and with its habits. */
export function sheetsFor(
  { seed, batches, habits }: Combination,
  table: CleanTable,
): { readonly clean: Sheet; readonly messy: Sheet } {
  const rolls = dice(seed).part("sheet");
  const chosen = habits.map(habitNamed);
  const [first, ...others] = PHASES;
  const start = cleanSheet(table, batches, rolls.part("clean"));
  const clean = withHabits(start, chosen, { phases: [first], dice: rolls });
  const messy = withHabits(clean, chosen, { phases: others, dice: rolls });
  return { clean, messy: withLocaleOfDays(messy, rolls.part("locale")) };
}

/**
 * Where no date of the sheet tells whether day or month comes first, nobody could read it in a
 * workbook that says the opposite: such a sheet gets a locale that writes as it does, or one that
 * does not say.
 */
function withLocaleOfDays(sheet: Sheet, rolls: Dice): Sheet {
  if (sheet.dayOrder === null || showsOrder(sheet)) return sheet;
  const own = sheet.dayOrder === "day-first" ? ["en_GB", "fr_FR", "es_MX"] : ["en_US"];
  return { ...sheet, locale: rolls.pick([...own, ...own, "en_ZA"]) };
}

function showsOrder({ tables }: Sheet): boolean {
  return tables.some(({ columns, rows }) =>
    rows.some(
      (row) =>
        row.kind === "batch" &&
        row.cells.some((cell, index) => {
          const column = columns[index];
          if (typeof cell !== "string" || column === undefined || !holdsDays(column)) return false;
          const reading = readDayText(cell);
          return reading.kind === "either-order" && Math.max(reading.first, reading.second) > 12;
        }),
    ),
  );
}
