import { madeOnce } from "../made-once";
import type { Records } from "../records";
import { hangsOn, type Method, type Step } from "../timetable";

/** A step that the records have a place for, with those that have to be done before it. */
export interface PlacedStep {
  readonly step: Step;
  /** Index among the records' steps. */
  readonly at: number;
  /** Those it hangs on, the nearest first, that the records have a place for too. */
  readonly above: readonly Above[];
}

interface Above {
  readonly step: Step;
  readonly at: number;
  /** Fewer days after it are too few; 0 where only the order is known. */
  readonly soonest: number;
  /** The usual day and the last after it, by the timetable's days from step to step. */
  readonly usual: number;
  readonly by: number;
}

/** Sooner than this part of the fewest days of the timetable is too soon (our choice). */
const TOO_SOON = 0.5;

/** Where the steps of a method stand in some records; looked up once a method. */
export function placedSteps({ stepKeys }: Records): (method: Method) => readonly PlacedStep[] {
  const placed = new Map<Method, readonly PlacedStep[]>();
  return (method) =>
    madeOnce(placed, method, () =>
      method.steps.flatMap((step) => {
        const at = stepKeys.indexOf(step.key);
        return at === -1 ? [] : [{ step, at, above: stepsAbove(method, step, stepKeys) }];
      }),
    );
}

function stepsAbove(method: Method, step: Step, stepKeys: readonly string[]): readonly Above[] {
  const above: Above[] = [];
  let [usual, by] = [0, 0];
  let counted: Step = step;
  for (let index = hangsOn(method, step); index !== null; ) {
    const one = method.steps[index] as Step;
    // A step hangs on one that its days are counted from, if through others between them.
    while (counted !== one) {
      usual += counted.usual;
      by += counted.by;
      counted = method.steps[counted.after as number] as Step;
    }
    const at = stepKeys.indexOf(one.key);
    // How soon it comes is known from the step alone that the days are counted from.
    const soonest = index === step.after ? step.from * TOO_SOON : 0;
    if (at !== -1) above.push({ step: one, at, soonest, usual, by });
    index = hangsOn(method, one);
  }
  return above;
}
