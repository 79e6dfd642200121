import type { TimetableFault } from "../faults";
import type { Need } from "./needs";
import type { StepKind } from "./step-kind";

/** Something that happens to every batch of a method. */
export interface Step {
  readonly name: string;
  /** The key under which records know the step; see words/step-key.ts. */
  readonly key: string;
  /** Index of the step that the days are counted from, in the method's list; null for the first step. */
  readonly after: number | null;
  /** Whole days after that step: the earliest, the usual and the latest. 0 for the first step. */
  readonly from: number;
  readonly usual: number;
  readonly by: number;
  /** Whether plants are counted at the step. */
  readonly counted: boolean;
  readonly kind: StepKind;
  /** Plants that pass the step, a share 0 to 1; null where nothing is counted or lost. */
  readonly kept: number | null;
  /** Plants that one person does in an hour; null when not known. */
  readonly perPersonHour: number | null;
  readonly needs: readonly Need[];
  readonly caution: string;
  readonly source: string;
}

/** Care that is repeated, from one step to another, such as weeding: by place, not by batch. */
export interface Round extends Step {
  /** Whole days from one time to the next, 1 or more. `from` and `by` say on which days it starts and ends. */
  readonly every: number;
  /** Index of the step with which it ends; null where the days or the batch end it. */
  readonly until: number | null;
}

/** A crop and a way of raising it, with its steps; a step stands behind the one it is counted from. */
export interface Method {
  readonly name: string;
  readonly steps: readonly Step[];
  /** Work that comes before the step which its days are counted from: they are below 0, or 0. */
  readonly ahead: readonly Step[];
  readonly rounds: readonly Round[];
  /** The step at which plants are fit for sale: the one known as "ready", else the last. */
  readonly ready: number;
}

/** A method of the table that can't be used. */
export interface LostMethod {
  readonly name: string;
  /** Index of the usable method that stands behind it in the table; their number where none does. */
  readonly before: number;
}

/** The methods that a nursery works by, in the order of its table. */
export interface Timetable {
  readonly methods: readonly Method[];
  /** Only where something of the table can't be used. */
  readonly leftOut?: {
    readonly faults: readonly TimetableFault[];
    readonly lost: readonly LostMethod[];
  };
}
