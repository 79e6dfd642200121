import { InputError } from "../faults";
import { madeOnce } from "../made-once";
import { type MethodReading, type MethodTexts, methodReader } from "./read-method";
import type { Method, Timetable } from "./timetable";

/** Finds the method that a batch is raised by; null where none or several are meant. */
type MethodFinder = (batch: MethodTexts) => Method | null;

/** How a batch's method is read; each spelling once, since thousands of batches share it. */
export function batchMethods(timetable: Timetable): (batch: MethodTexts) => MethodReading {
  const read = methodReader(timetable);
  const found = new Map<string, MethodReading>();
  return (batch) => {
    const key = batch.crop ? `${batch.crop}\n${batch.method}` : batch.method;
    return madeOnce(found, key, () => read(batch));
  };
}

/** A finder that takes the method a batch names, and where it names none, the timetable's first. */
export function methodFinder(timetable: Timetable): MethodFinder {
  const read = batchMethods(timetable);
  return (batch) => {
    const reading = read(batch);
    return reading.code === "method" ? reading.method : null;
  };
}

/**
 * The method of a name, or the timetable's first where none is named.
 *
 * @throws InputError "unknown-method"; "methods-fit" where it may be several; "no-steps" when the timetable has no method
 */
export function methodOrRefuse(timetable: Timetable, name: string | null): Method {
  if (name === null) {
    const first = timetable.methods[0];
    if (first !== undefined) return first;
    throw new InputError({ code: "no-steps" });
  }
  const reading = methodReader(timetable)({ method: name });
  if (reading.code === "method") return reading.method;
  const names = (methods: readonly Method[]) => methods.map((one) => one.name);
  if (reading.code === "several-methods") {
    throw new InputError({ code: "methods-fit", name, fitting: names(reading.methods) });
  }
  const known = names(timetable.methods);
  throw new InputError({ code: "unknown-method", name, known });
}

/** The method by which most of some batches were raised; null when the timetable is empty. */
export function usualMethod(timetable: Timetable, batches: readonly MethodTexts[]): Method | null {
  const find = methodFinder(timetable);
  const counts = new Map<Method, number>();
  for (const batch of batches) {
    const method = find(batch);
    if (method !== null) counts.set(method, (counts.get(method) ?? 0) + 1);
  }
  // Of as many the timetable's first, so that the order of the rows tells nothing.
  let best = timetable.methods[0] ?? null;
  for (const method of timetable.methods) {
    if (best !== null && (counts.get(method) ?? 0) > (counts.get(best) ?? 0)) best = method;
  }
  return best;
}
