import { totalOf } from "../mathematics";
import type { Batch, PlantsGone } from "../records";
import type { Method } from "../timetable";

/** Between which counts plants were lost; `between` where a stage was passed without a count. */
export type LossStage = "not-come-up" | "graded-out" | "not-taken" | "lost-later" | "between";

/** The count that misses them says what became of plants; any other count, that they were lost later. */
const STAGES: ReadonlyMap<string, LossStage> = new Map([
  ["germination", "not-come-up"],
  ["grafting", "graded-out"],
  ["rooting", "not-taken"],
  ["take count", "not-taken"],
]);

/** After these there is nothing to be named: what is lost by then was lost late. */
const LAST: ReadonlySet<string> = new Set(["ready", ""]);

function stageOf(key: string): LossStage {
  return STAGES.get(key) ?? "lost-later";
}

/** Plants of one batch that were lost between two counts, or since the last. */
export interface StageLoss {
  readonly stage: LossStage;
  /** The count that misses them, by its name, where it is a step that no stage is named after; else null. */
  readonly by: string | null;
  /** The last step that they surely went through, by index in the method; -1 where that is not known. */
  readonly through: number;
  /** Gone without having been written down as culled. */
  readonly lost: number;
  readonly culled: readonly Pick<PlantsGone, "plants" | "reason">[];
}

/** What the counts of a batch are read by. */
export interface CountedBy {
  /** Keys of the records' steps, in the order of the batch's counts. */
  readonly stepKeys: readonly string[];
  /** Null where it is not known: a stage passed without a count can't be told then. */
  readonly method: Method | null;
}

interface Point {
  readonly plants: number;
  readonly day: number | null;
  /** Empty for plants that came from a lot by a line of their own. */
  readonly key: string;
}

interface Stretch {
  readonly drop: number;
  readonly until: number | null;
  readonly culled: Pick<PlantsGone, "plants" | "reason">[];
  given: number;
}

/**
 * What a batch lost from count to count. Plants given to other batches are no loss. Plants culled on a day
 * stand at the count that comes next; of those without a day the last lost are meant, since early losses
 * have a count of their own to show them.
 */
export function stageLosses(batch: Batch, by: CountedBy): readonly StageLoss[] {
  const points = pointsOf(batch, by);
  const stretches = points.slice(1).map((to, at): Stretch => {
    const drop = (points[at] as Point).plants - to.plants;
    return { drop, until: to.day, culled: [], given: 0 };
  });
  const last = points[points.length - 1];
  if (last === undefined) return [];
  const since: Pick<PlantsGone, "plants" | "reason">[] = [];
  const endsBy = (isBy: (until: number) => boolean) =>
    stretches.find(({ until }) => until !== null && isBy(until));
  for (const { plants, day } of batch.givings ?? []) {
    if (day === null || last.day === null || day >= last.day) continue;
    const stretch = endsBy((until) => day < until);
    if (stretch !== undefined) stretch.given += plants;
  }
  const written = batch.cullings ?? [];
  const undated: Pick<PlantsGone, "plants" | "reason">[] = [];
  for (const one of written) {
    const { day } = one;
    if (day === null || last.day === null) undated.push(one);
    else if (day > last.day) since.push(one);
    else (endsBy((until) => day <= until)?.culled ?? undated).push(one);
  }
  const unwritten = (batch.culled ?? 0) - totalOf(written.map(({ plants }) => plants));
  if (unwritten > 0) undated.push({ plants: unwritten, reason: "" });
  for (const { plants, reason } of undated) {
    let left = plants;
    for (const stretch of [...stretches].reverse()) {
      const part = Math.min(left, Math.max(0, lostIn(stretch)));
      if (part > 0) stretch.culled.push({ plants: part, reason });
      left -= part;
    }
    if (left > 0) (stretches[stretches.length - 1]?.culled ?? since).push({ plants: left, reason });
  }
  const steps = by.method?.steps ?? [];
  const indexOf = (key: string) => steps.findIndex((step) => step.key === key);
  const losses = stretches.map((stretch, at): StageLoss => {
    const [from, to] = [points[at] as Point, points[at + 1] as Point];
    const [first, end] = [indexOf(from.key), indexOf(to.key)];
    const isPassed = steps
      .slice(first + 1, Math.max(0, end))
      .some(({ key, counted }) => first >= 0 && counted && stageOf(key) !== stageOf(to.key));
    return {
      stage: isPassed ? "between" : stageOf(to.key),
      by: isPassed || STAGES.has(to.key) || LAST.has(to.key) ? null : (steps[end]?.name ?? to.key),
      through: isPassed ? first : end - 1,
      lost: Math.max(0, lostIn(stretch)),
      culled: stretch.culled,
    };
  });
  if (since.length === 0) return losses;
  const at = indexOf(last.key);
  const next = steps.slice(at + 1).find(({ counted }) => at >= 0 && counted);
  const stage = next === undefined ? "lost-later" : stageOf(next.key);
  return [...losses, { stage, by: null, through: at, lost: 0, culled: since }];
}

/** The counts of a batch, in the order of its steps. */
function pointsOf(batch: Batch, { stepKeys }: CountedBy): readonly Point[] {
  const points = batch.counts.flatMap((plants, at): Point[] =>
    plants === null ? [] : [{ plants, day: batch.days[at] ?? null, key: stepKeys[at] ?? "" }],
  );
  const came = batch.fromLot === "" ? null : batch.received;
  return came === null ? points : [{ plants: came, day: null, key: "" }, ...points];
}

function lostIn({ drop, given, culled }: Stretch): number {
  return drop - given - totalOf(culled.map(({ plants }) => plants));
}
