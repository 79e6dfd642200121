import { methodNamed } from "./read-timetable";
import type { Method, Timetable } from "./timetable";

/** Finds the method that a batch is raised by; null where the timetable lacks it, or is empty. */
export type MethodFinder = (batch: { readonly method: string }) => Method | null;

/**
 * A finder that takes the method a batch names, and where it names none, the timetable's first.
 * Each spelling is looked up once, since thousands of batches share it.
 */
export function methodFinder(timetable: Timetable): MethodFinder {
  const found = new Map<string, Method | null>([["", timetable.methods[0] ?? null]]);
  return ({ method: name }) => {
    let method = found.get(name);
    if (method === undefined) {
      method = methodNamed(timetable, name);
      found.set(name, method);
    }
    return method;
  };
}
