import type { Step } from "../timetable";
import type { BatchState } from "./batch-state";
import type { Projection } from "./project";

/** How many plants a step to come is likely to have; null where they were never counted. */
export interface LikelyPlants {
  /** Those that pass it, as BATCH_STEPS says: what it needs is used on them. */
  readonly passing: number | null;
  /**
   * Those that its work is done to. A job is done to those that pass, since nobody grafts what is graded
   * out; counted and looked at are all that stand before, since only then is it known which are lost.
   */
  readonly worked: number | null;
}

/**
 * The plants likely to be at a step, by index: those standing or planned, times what is likely to be kept
 * until then, by the same forecast as everything else. Null too where plants are planned for a later step only.
 */
export function likelyPlants(
  { plants }: Pick<Projection, "plants">,
  state: BatchState,
  index: number,
): LikelyPlants {
  if (state.planned !== null && state.planned.at > index) return { passing: null, worked: null };
  const { kind } = state.method.steps[index] as Step;
  const likely = (at: number) => plants(state, at)?.likely ?? null;
  return {
    // Only when asked for: what a step keeps is learned from all records, and a count needs nothing of it.
    get passing() {
      return likely(index);
    },
    worked: likely(kind === "job" ? index : index - 1),
  };
}
