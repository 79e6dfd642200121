import type { Dice } from "./dice";
import type { Sheet } from "./sheet";

/** The order in which a sheet is made messy: what stands in it first, what stands around it last. */
export const PHASES = [
  /** Which batches, in what order. The clean reading is taken after this. */
  "batches",
  "cells",
  "tables",
  "columns",
  "headers",
  "between",
  "groups",
  "edges",
] as const;

type Phase = (typeof PHASES)[number];

/** Something that real offices do to a table. */
export interface Habit {
  readonly name: string;
  /** Names of habits that it can't go with. */
  readonly not?: readonly string[];
  readonly at: Readonly<Partial<Record<Phase, (sheet: Sheet, dice: Dice) => Sheet>>>;
}

/** Puts habits upon a sheet for some phases. @param dice each habit rolls dice of its own */
export function withHabits(
  sheet: Sheet,
  habits: readonly Habit[],
  { phases, dice }: { readonly phases: readonly Phase[]; readonly dice: Dice },
): Sheet {
  let made = sheet;
  for (const phase of phases) {
    for (const habit of habits) {
      made = habit.at[phase]?.(made, dice.part(`${habit.name} ${phase}`)) ?? made;
    }
  }
  return made;
}
