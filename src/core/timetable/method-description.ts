import type { StepKind } from "./step-kind";

/** A step as it is written down in a method's own file. */
export interface StepDescription {
  readonly name: string;
  /** Name of the step that the days are counted from; null for the first. */
  readonly after: string | null;
  /** From, usual and by, in whole days; below 0 for work that comes before that step. */
  readonly days: readonly [from: number, usual: number, by: number];
  readonly counted?: boolean;
  readonly keptOf100?: number;
  /** That share is one of tree nurseries in general, for want of a figure of the crop. */
  readonly isGeneralShare?: boolean;
  readonly perPersonHour?: number;
  /** As readNeeds reads it. */
  readonly needs?: string;
  readonly caution?: string;
  readonly source: string;
  /** Where it is not the usual one, see usualKind. */
  readonly kind?: StepKind;
  /** Care that is repeated every so many days, from the first of `days` to the last. */
  readonly every?: number;
  /** The step that ends it. */
  readonly until?: string;
}

/** A built-in method as it is written down. */
export interface MethodDescription {
  readonly name: string;
  readonly steps: readonly StepDescription[];
}
