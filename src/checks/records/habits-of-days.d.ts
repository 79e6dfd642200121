import type { Habit } from "./habit";
export declare const habitsOfDays: readonly Habit[];
