import type { Timetable } from "../../core";

/** The key of a timetable's step by its name; null when it has none of that name. */
export function stepKeyOf({ methods }: Timetable, task: string): string | null {
  return methods.flatMap(({ steps }) => steps).find(({ name }) => name === task)?.key ?? null;
}
