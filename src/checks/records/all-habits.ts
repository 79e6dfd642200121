import type { Habit } from "./habit";
import { habitsOfColumns } from "./habits-of-columns";
import { habitsOfCounts } from "./habits-of-counts";
import { habitsOfDays } from "./habits-of-days";
import { habitsOfEdges } from "./habits-of-edges";
import { habitsOfHeaders } from "./habits-of-headers";
import { habitsOfRows } from "./habits-of-rows";
import { habitsOfSums } from "./habits-of-sums";

/** Every habit, in the order in which those of one phase are put upon a sheet. */
export const allHabits: readonly Habit[] = [
  ...habitsOfColumns,
  ...habitsOfHeaders,
  ...habitsOfDays,
  ...habitsOfCounts,
  ...habitsOfSums,
  ...habitsOfRows,
  ...habitsOfEdges,
];

/** @throws Error when there is none of that name */
export function habitNamed(name: string): Habit {
  const habit = allHabits.find((one) => one.name === name);
  if (habit === undefined) throw new Error(`no habit is called "${name}"`);
  return habit;
}
