import type { BatchLosses, LossRow, PlantsFate } from "../core";
import * as column from "../sentences/made/batch-columns";
import * as text from "../sentences/made/losses";
import { fewNames } from "./names";
import { recordsRemarks } from "./records";
import { together } from "./sentence-of";

const MOST_NAMES = 12;

/** What became of plants. */
const FATE_WORDS: Readonly<Record<PlantsFate, () => string>> = {
  started: column.started,
  "not-come-up": column.notComeUp,
  "graded-out": column.gradedOut,
  "not-taken": column.notTaken,
  "lost-later": column.lostLater,
  between: column.between,
  unexplained: column.unexplained,
  given: column.given,
  dispatched: column.dispatched,
  standing: text.standing,
};

/** The same of a row of losses, which names the count where no stage is named after it. */
export function fateWords({ stage, step }: Pick<LossRow, "stage" | "step">): string {
  return step === null ? FATE_WORDS[stage]() : text.lostBy({ step });
}

/** Why plants were culled, "culled" where nobody wrote it; blank for those that were not. */
export function reasonWords(reason: string | null): string {
  return reason === null ? "" : reason || text.culled();
}

/** What the losses leave out; null where nothing. */
export function lossesRemarks(
  losses: Pick<BatchLosses, "notCounted" | "withoutMethod" | "leftOut">,
  where: "cell" | "page",
): string | null {
  const { notCounted, withoutMethod, leftOut } = losses;
  const named = (
    say: (of: { readonly batches: readonly string[] }) => string,
    of: readonly string[],
  ) => (of.length === 0 ? [] : [say({ batches: fewNames(of, MOST_NAMES) })]);
  const remark = recordsRemarks(leftOut, where);
  return together([
    ...(remark === null ? [] : [remark]),
    ...named(text.withoutMethod, withoutMethod),
    ...named(text.notCounted, notCounted),
  ]);
}
