import type { Method, Step } from "./timetable";

/** What the plant does by itself. It waits for the graft, not for the wrap to be opened. */
const GROWTH = new Set([
  "bud break",
  "first flush",
  "flush hardening",
  "branching",
  "union closed",
]);

/**
 * The index of the step that can't come after this one; null where none can be named. It is the step from
 * which the days are counted, but buds may break before the wrap is opened: then it is the step above.
 */
export function hangsOn(method: Method, { key, after }: Step): number | null {
  const above = after === null ? undefined : method.steps[after];
  return GROWTH.has(key) && above?.key === "first release" ? above.after : after;
}
