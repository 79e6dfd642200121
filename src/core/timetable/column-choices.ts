import { type ColumnMatch, FACT_NAMES, LEAVE_ALONE } from "../records";
import { normalText } from "../words";
import { recordedSteps } from "./beside-steps";
import type { Step, Timetable } from "./timetable";

/** What nurseries call the columns of the steps that everyone has: day, plants. */
const USUAL_NAMES: Readonly<Record<string, readonly [day: string, count: string]>> = {
  sowing: ["Sown", "Seeds sown"],
  germination: ["Germination day", "Germinated"],
  grafting: ["Grafted on", "Grafts made"],
  "take count": ["Take count day", "Takes"],
  ready: ["Ready on", "Ready plants"],
};

/**
 * Our names for everything that a column may be read as, for a person to choose from: the facts, and
 * for each step of the timetable its day and, if counted, its plants.
 */
export function columnChoices(timetable: Timetable): readonly string[] {
  const steps = timetable.methods.flatMap((method) =>
    recordedSteps(method).flatMap((step) =>
      (step.counted ? (["day", "count"] as const) : (["day"] as const)).map((what) =>
        stepColumnName(step, what),
      ),
    ),
  );
  return [LEAVE_ALONE, ...Object.values(FACT_NAMES), ...new Set(steps)];
}

/** What hardly any answer does without. */
export type EssentialName = "batch" | "start" | "graftDay" | "grafts" | "takes";

/** Our names for the columns of each; any of them will do. What no method has is not among them. */
export function essentialColumns(
  timetable: Timetable,
): readonly { readonly what: EssentialName; readonly readAs: readonly string[] }[] {
  const { methods } = timetable;
  const names = (step: (steps: readonly Step[]) => Step | undefined, what: "day" | "count") => [
    ...new Set(
      methods.flatMap(({ steps }) => {
        const found = step(steps);
        return found === undefined ? [] : [stepColumnName(found, what)];
      }),
    ),
  ];
  const keyed = (key: string) => (steps: readonly Step[]) => steps.find((one) => one.key === key);
  const essentials = [
    { what: "batch", readAs: [FACT_NAMES.batch] },
    { what: "start", readAs: names(([first]) => first, "day") },
    { what: "graftDay", readAs: names(keyed("grafting"), "day") },
    { what: "grafts", readAs: names(keyed("grafting"), "count") },
    { what: "takes", readAs: names(keyed("take count"), "count") },
  ] as const;
  return essentials.filter(({ readAs }) => readAs.length > 0);
}

/** The choice that a column was read as; LEAVE_ALONE when it was not used. */
export function choiceOf({ target }: Pick<ColumnMatch, "target">, timetable: Timetable): string {
  if (target === null) return LEAVE_ALONE;
  if (target.kind !== "step") return FACT_NAMES[target.fact];
  const step = timetable.methods.flatMap(recordedSteps).find(({ key }) => key === target.key);
  return stepColumnName(step ?? { key: target.key, name: target.key }, target.what);
}

/**
 * A step's column in a foreman's words, which are also understood as a header: "Takes" for the count of
 * the step "Take count", "Plants counted at Rooting" for that of "Rooting".
 */
function stepColumnName({ key, name }: Pick<Step, "key" | "name">, what: "day" | "count"): string {
  // A nursery's own word for the step stays in its column's name.
  const usual = normalText(name) === key ? USUAL_NAMES[key] : undefined;
  if (usual !== undefined) return usual[what === "day" ? 0 : 1];
  return what === "day" ? `${name} day` : `Plants counted at ${name}`;
}
