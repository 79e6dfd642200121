import { madeOnce } from "../made-once";
import type { GeneralShares } from "../records";
import { hasGeneralShare } from "../timetable";
import type { Forecaster, PassageAnyDay } from "./forecaster";

/** Apart from the timetable by less than this, a share is the timetable's: it is said in whole percent. */
const SAME_SHARE = 0.005;

/** A share that a step of a method keeps, of nurseries in general. */
export interface GeneralShare {
  /** As the timetable has it, 0 to 1. */
  readonly kept: number;
  /** What the records make of it; null where they say nothing else. */
  readonly mean: number | null;
}

/** The share with which the last step of a passage is reckoned, if that is of nurseries in general; else null. */
export function generalShare(
  { method, upTo, variety }: Omit<PassageAnyDay, "after">,
  forecaster: Forecaster,
): GeneralShare | null {
  const step = method.steps[upTo];
  if (step?.kept == null || !hasGeneralShare(method, step)) return null;
  let after = upTo - 1;
  while (after > 0 && !method.steps[after]?.counted) after -= 1;
  const { mean } = forecaster.kept({ method, after, upTo, variety, from: null });
  const isOwn = Math.abs(mean - step.kept) >= SAME_SHARE;
  return { kept: step.kept, mean: isOwn ? mean : null };
}

/**
 * A remark on the shares of nurseries in general that an answer counts on, of all varieties together; none
 * where it counts on no such share.
 *
 * @param passages the ways of plants that are reckoned
 */
export function generalShares(
  passages: readonly PassageAnyDay[],
  forecaster: Forecaster,
): readonly GeneralShares[] {
  const seen = new Set<string>();
  const found = new Map<string, { step: string; methods: string[] } & GeneralShare>();
  for (const { method, after, upTo } of passages) {
    for (let index = after + 1; index <= upTo; index += 1) {
      const key = `${method.name}\n${index}`;
      if (seen.has(key)) continue;
      seen.add(key);
      const share = generalShare({ method, upTo: index, variety: "" }, forecaster);
      if (share === null) continue;
      const step = method.steps[index]?.name ?? "";
      const alike = JSON.stringify([step, share]);
      madeOnce(found, alike, () => ({ step, ...share, methods: [] })).methods.push(method.name);
    }
  }
  return found.size === 0 ? [] : [{ code: "general-shares", shares: [...found.values()] }];
}
