import type { Habit } from "./habit";
export declare const habitsOfSums: readonly Habit[];
