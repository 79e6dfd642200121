import type { Habit } from "./habit";
/** Every habit, in the order in which those of one phase are put upon a sheet. */
export declare const allHabits: readonly Habit[];
/** @throws Error when there is none of that name */
export declare function habitNamed(name: string): Habit;
