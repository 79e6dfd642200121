import type { Timetable } from "../timetable/timetable";
import type { ColumnMatch } from "./match-columns";
import { FACT_NAMES, LEAVE_ALONE } from "./target-names";

/**
 * Our names for everything that a column may be read as, for a person to choose from: the facts, and
 * for each step of the timetable its day and, if counted, its plants.
 */
export function columnChoices(timetable: Timetable): readonly string[] {
  const steps = timetable.methods.flatMap((method) =>
    method.steps.flatMap(({ name, counted }) =>
      counted ? [`${name} day`, `${name} count`] : [`${name} day`],
    ),
  );
  return [LEAVE_ALONE, ...Object.values(FACT_NAMES), ...new Set(steps)];
}

/** The choice that a column was read as; LEAVE_ALONE when it was not used. */
export function choiceOf(match: ColumnMatch, timetable: Timetable): string {
  const { target } = match;
  if (target === null) return LEAVE_ALONE;
  if (target.kind !== "step") return FACT_NAMES[target.fact];
  const step = timetable.methods
    .flatMap(({ steps }) => steps)
    .find(({ key }) => key === target.key);
  return `${step?.name ?? target.key} ${target.what}`;
}
