import { likeName } from "./batch-names";
import type { LogEvent } from "./read-log";
import type { Records } from "./records";

/** The lines of the logs in which a step of a batch is written, in the order in which they stand. */
export function linesOf(records: Records, batch: string, stepKey: string): readonly LogEvent[] {
  const wanted = likeName(batch);
  return records.lines.filter(
    ({ batch: named, what }) =>
      what.kind === "step" && what.key === stepKey && likeName(named) === wanted,
  );
}
