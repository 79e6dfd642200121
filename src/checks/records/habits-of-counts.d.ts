import type { Habit } from "./habit";
export declare const habitsOfCounts: readonly Habit[];
