import type { CleanTable } from "./clean-sheet";
import { type Combination, combination, sheetsFor } from "./combination";
import { type Difference, differences, outcomeOf } from "./differences";
import { readSheet } from "./reading";

/** How often a habit was used, and what became of its sheets. */
export interface HabitTally {
  readonly habit: string;
  readonly used: number;
  readonly identical: number;
  readonly silent: number;
}

export interface HabitCheck {
  readonly combinations: number;
  /** Sheets that were read as the clean ones. */
  readonly identical: number;
  /** Sheets of which BATCH_CHECK tells every difference. */
  readonly listed: number;
  /** Seeds of the sheets in which something was read otherwise without a word. */
  readonly silent: readonly number[];
  /** By habit, the ones that fare worst first. */
  readonly habits: readonly HabitTally[];
  /** Differences that BATCH_CHECK tells, by its sentence, most first. */
  readonly told: readonly ToldDifference[];
}

export interface ToldDifference {
  /** The trouble's sentence, with dots in place of names and numbers. */
  readonly trouble: string;
  readonly sheets: number;
  /** The seed of one of them. */
  readonly seed: number;
}

/** Puts combinations of habits upon the clean sample and holds the readings against each other. */
export function checkHabits(
  table: CleanTable,
  { from, combinations }: { readonly from: number; readonly combinations: number },
): HabitCheck {
  const tally = new Map<string, { used: number; identical: number; silent: number }>();
  const told = new Map<string, { sheets: number; readonly seed: number }>();
  const silent: number[] = [];
  let identical = 0;
  for (let seed = from; seed < from + combinations; seed += 1) {
    const drawn = combination(seed);
    const found = differencesOf(drawn, table);
    const outcome = outcomeOf(found);
    if (outcome === "identical") identical += 1;
    if (outcome === "silent") silent.push(seed);
    for (const habit of drawn.habits) {
      const own = tally.get(habit) ?? { used: 0, identical: 0, silent: 0 };
      tally.set(habit, own);
      own.used += 1;
      if (outcome === "identical") own.identical += 1;
      if (outcome === "silent") own.silent += 1;
    }
    for (const trouble of troublesOf(found)) {
      const own = told.get(trouble) ?? { sheets: 0, seed };
      told.set(trouble, own);
      own.sheets += 1;
    }
  }
  return {
    combinations,
    identical,
    listed: combinations - identical - silent.length,
    silent,
    habits: [...tally]
      .map(([habit, own]) => ({ habit, ...own }))
      .sort((a, b) => a.identical / a.used - b.identical / b.used),
    told: [...told]
      .map(([trouble, own]) => ({ trouble, ...own }))
      .sort((a, b) => b.sheets - a.sheets),
  };
}

export function differencesOf(drawn: Combination, table: CleanTable): Difference[] {
  const { clean, messy } = sheetsFor(drawn, table);
  return differences(readSheet(clean), readSheet(messy));
}

/** The sentences that tell of differences, with dots in place of names and numbers. */
export function troublesOf(found: readonly Difference[]): ReadonlySet<string> {
  const troubles = found.flatMap(({ listedAs }) => (listedAs === null ? [] : [listedAs]));
  return new Set(troubles.map((one) => one.replace(/\d+( \w{3} \d{4})?|"[^"]*"/g, "…")));
}
