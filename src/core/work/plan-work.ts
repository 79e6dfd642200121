import { cheapestFlow } from "../mathematics";
import { groupTasks } from "./group-tasks";
import { type Overload, overloads } from "./overloads";
import { type Piece, shareOut } from "./share-out";
import { workNetwork } from "./work-network";
import type { WorkQuestion } from "./work-question";

/** A plan. Tasks and persons go by their indexes in the question; amounts are hundredths of an hour. */
export interface WorkPlan {
  readonly pieces: readonly Piece[];
  /** By task: what can wait, or must, until after the last day that is planned. */
  readonly after: readonly number[];
  /** By task: what fits nowhere in its window. */
  readonly unplaced: readonly number[];
  /** Why not; empty exactly when everything fits. */
  readonly overloads: readonly Overload[];
}

/**
 * Sets tasks into days and persons, inside their windows, nearest to their usual days.
 *
 * A task may be split between days and persons, and put down and taken up again, so that a plan
 * exists exactly when no set of tasks asks for more than the hands have that can do them in their
 * windows. Of all plans that place the most hours, the one that is taken has the least sum of hours
 * x days from the usual day. A task whose last day is past has no window any more: it is done as
 * soon as the others' windows allow, before any care for usual days. The same tasks and persons in
 * the same order have the same plan.
 *
 * Method: transport of hours from tasks to days and persons as a cheapest flow; the smallest cut
 *   is the proof where it can't be done.
 * Source: Horn, W. A. (1974). Some simple scheduling algorithms. Naval Research Logistics
 *   Quarterly 21, 177-185 (tasks that may be split, in windows, as a flow).
 */
export function planWork(question: WorkQuestion): WorkPlan {
  const grouped = groupTasks(question);
  const network = workNetwork(grouped, question);
  const flow = cheapestFlow(network);
  const { pieces, after, unplaced } = shareOut({ question, grouped, network, flow });
  return { pieces, after, unplaced, overloads: overloads({ question, grouped, network, flow }) };
}
