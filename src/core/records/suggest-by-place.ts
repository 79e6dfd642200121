import type { ColumnSeen } from "./column-match";
import type { ColumnTarget } from "./column-target";

/** So many suggestions help, more do not (our choice). */
const MOST = 3;
/** Counts are slips now and then, and a batch or two are mended: so many of the rows have to agree. */
const MOSTLY = 0.8;
const HALF = 0.5;

/**
 * What a column of counts or days may be by where it stands: plants get fewer from step to step and days
 * later, so it belongs to a step between those whose columns it stands between, in the sheet and by what it
 * holds. The likeliest first.
 *
 * @param stepKeys the steps in their order
 */
export function mayBeByPlace(
  column: ColumnSeen,
  all: readonly ColumnSeen[],
  stepKeys: readonly string[],
): readonly ColumnTarget[] {
  const { holds, plainly } = column.values();
  if (!plainly || (holds !== "count" && holds !== "day")) return [];
  const steps = holds === "count" ? stepKeys.filter((key) => COUNTED.includes(key)) : stepKeys;
  let after = -1;
  let before = steps.length;
  for (const other of all) {
    const { target } = other;
    if (target?.kind !== "step" || target.what !== holds) continue;
    const at = steps.indexOf(target.key);
    if (at < 0) continue;
    const goesBefore = ordered(other, column, holds);
    const goesAfter = ordered(column, other, holds);
    const stands = other.column < column.column;
    if (goesBefore && (!goesAfter || stands)) after = Math.max(after, at);
    else if (goesAfter) before = Math.min(before, at);
    else return [];
  }
  const taken = new Set(
    all.flatMap(({ target }) =>
      target?.kind === "step" && target.what === holds ? [target.key] : [],
    ),
  );
  return steps
    .slice(after + 1, Math.max(before, after + 1))
    .filter((key) => !taken.has(key))
    .slice(0, MOST)
    .map((key) => ({ kind: "step", key, what: holds }));
}

/**
 * Whether a column of days or counts stands where those of a step would: behind the columns of earlier
 * steps and before those of later ones, with days no earlier, or no more plants, than in the columns on its
 * left, and the other way about on its right. False where no other step tells.
 *
 * @param stepKeys the steps in their order
 */
export function fitsInPlace(
  column: ColumnSeen,
  target: Extract<ColumnTarget, { readonly kind: "step" }>,
  { all, stepKeys }: { readonly all: readonly ColumnSeen[]; readonly stepKeys: readonly string[] },
): boolean {
  const { holds, plainly } = column.values();
  if (!plainly || holds !== target.what) return false;
  const order = USUAL_ORDER.indexOf(target.key);
  let told = false;
  for (const other of all) {
    if (other === column || other.target?.kind !== "step") continue;
    const place = USUAL_ORDER.indexOf(other.target.key);
    if (other.target.key === "grafting" && order < 0 && AFTER_GRAFTING.has(target.key)) {
      told = true;
      if (other.column > column.column) return false;
    }
    if (place >= 0 && order >= 0 && place !== order) {
      told = true;
      if (place < order !== other.column < column.column) return false;
    }
    if (other.target.what !== holds) continue;
    const pair =
      other.column < column.column ? ([other, column] as const) : ([column, other] as const);
    if (!ordered(...pair, holds)) return false;
  }
  return told && stepKeys.includes(target.key);
}

/** Steps behind the grafting that have no lasting place among the rest. */
const AFTER_GRAFTING: ReadonlySet<string> = new Set([
  "first release",
  "bud break",
  "first flush",
  "union closed",
]);

/** Steps that come one behind the other whatever the method. */
const USUAL_ORDER: readonly string[] = [
  "sowing",
  "germination",
  "potting on",
  "grafting",
  "take count",
  "cut back",
  "flush hardening",
  "ready",
];

/** Fewer rows than these show no order. */
const FEWEST_ROWS = 3;

/**
 * Whether a count that was read by parts of its header is plainly more than at a step before, or less than at
 * a later one: then it may be something else.
 */
export function isOutOfPlace(column: ColumnSeen, all: readonly ColumnSeen[]): boolean {
  const { target, sureness } = column;
  if (sureness !== 2 || target?.kind !== "step" || target.what !== "count") return false;
  const at = COUNTED.indexOf(target.key);
  return all.some((other) => {
    if (other.target?.kind !== "step" || other.target.what !== "count") return false;
    const place = COUNTED.indexOf(other.target.key);
    if (place < 0 || at < 0 || place === at) return false;
    const pair = place < at ? ([other, column] as const) : ([column, other] as const);
    return orderedShare(...pair, "count") < HALF;
  });
}

/** The steps at which plants are mostly counted, in their order. */
const COUNTED: readonly string[] = ["sowing", "germination", "grafting", "take count", "ready"];

/** Whether one column can be of an earlier step than the other: no fewer plants, or no later days. */
function ordered(one: ColumnSeen, other: ColumnSeen, holds: "day" | "count"): boolean {
  return orderedShare(one, other, holds) >= MOSTLY;
}

/** In which share of the rows it can; 1 where too few hold both. */
function orderedShare(one: ColumnSeen, other: ColumnSeen, holds: "day" | "count"): number {
  const ones = one.values().numbers;
  const others = other.values().numbers;
  let both = 0;
  let agree = 0;
  ones.forEach((a, row) => {
    const b = others[row] ?? null;
    if (a === null || b === null) return;
    both += 1;
    if (holds === "count" ? a >= b : a <= b) agree += 1;
  });
  return both < FEWEST_ROWS ? 1 : agree / both;
}
