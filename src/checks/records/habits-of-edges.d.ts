import type { Habit } from "./habit";
export declare const habitsOfEdges: readonly Habit[];
