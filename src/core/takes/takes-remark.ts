import type { LeftOut } from "../records";
import type { CountedBatches } from "./counted-batches";

/** What is to be said beside takes. */
export type TakesRemark =
  | { readonly code: "not-counted-yet"; readonly batches: number }
  | { readonly code: "more-taken-than-grafted"; readonly batches: number }
  | { readonly code: "no-grafting-day"; readonly batches: number }
  /** No group has two counted batches, so that how much batches vary is unknown. */
  | { readonly code: "one-batch-each" }
  /** Between what shares batches of a group's usual size mostly take. */
  | {
      readonly code: "usual-batch";
      readonly grafted: number;
      readonly low: number;
      readonly high: number;
    }
  | { readonly code: "not-cause" }
  /** People who differ are not named where nobody has asked for them to be compared. */
  | { readonly code: "people-not-named" }
  | LeftOut;

/** Of the batches that can't be used. */
export function notUsed({ notCounted, impossible }: CountedBatches): readonly TakesRemark[] {
  return notUsedCounts(notCounted.length, impossible.length);
}

/** The same of their numbers. */
export function notUsedCounts(notCounted: number, impossible: number): readonly TakesRemark[] {
  const remarks: TakesRemark[] = [];
  if (notCounted > 0) remarks.push({ code: "not-counted-yet", batches: notCounted });
  if (impossible > 0) remarks.push({ code: "more-taken-than-grafted", batches: impossible });
  return remarks;
}
