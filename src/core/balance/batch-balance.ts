import type { CivilDay } from "../dates";
import { totalOf } from "../mathematics";
import { type Batch, lastCounted, startedWith } from "../records";
import { type CountedBy, type StageLoss, stageLosses } from "./stage-losses";

/**
 * Where the plants of a batch went:
 * started = standing + given + dispatched + culled + lost at the stages + unexplained, to the plant.
 */
export interface BatchBalance {
  readonly started: number;
  readonly culled: number;
  readonly given: number;
  readonly dispatched: number;
  /** What should be left of what came in. */
  readonly shouldStand: number;
  /** What stands by the last count, less what left since; none once the batch is closed. */
  readonly standing: number;
  readonly lastCount: number;
  readonly countedOn: CivilDay | null;
  /** What was lost from count to count, see stage-losses.ts. */
  readonly losses: readonly StageLoss[];
  /** Plants of which no count tells when they went; below 0 when more stand than can. */
  readonly unexplained: number;
  /** Plants that left after the last count. */
  readonly leftSince: number;
}

/**
 * Balances a batch. Plants culled are taken to have gone before the last count, when there is a
 * count after the first and no day says otherwise; plants dispatched after it; plants given to another batch before it when
 * that batch began before the day of the count.
 *
 * @returns null when nothing was ever counted
 */
export function batchBalance(batch: Batch, by: CountedBy): BatchBalance | null {
  const started = startedWith(batch);
  if (started === null) return null;
  const index = lastCounted(batch);
  const lastCount = index === null ? started : (batch.counts[index] as number);
  const counts = batch.counts.filter((count) => count !== null).length;
  const culled = batch.culled ?? 0;
  const dispatched = batch.dispatched ?? 0;
  const countedAgain = counts > (batch.received !== null && batch.fromLot !== "" ? 0 : 1);
  const leftSince =
    dispatched +
    batch.given -
    batch.givenBeforeCount +
    (countedAgain ? (batch.culledSinceCount ?? 0) : culled);
  const shouldStand = started - culled - batch.given - dispatched;
  const standing = batch.closed ? 0 : Math.max(0, lastCount - leftSince);
  const losses = stageLosses(batch, by);
  return {
    started,
    culled,
    given: batch.given,
    dispatched,
    shouldStand,
    standing,
    lastCount,
    countedOn: index === null ? null : (batch.days[index] ?? null),
    losses,
    unexplained: shouldStand - standing - totalOf(losses.map(({ lost }) => lost)),
    leftSince,
  };
}
