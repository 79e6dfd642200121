import type { Habit } from "./habit";
export declare const habitsOfHeaders: readonly Habit[];
