import type { ColumnSeen } from "./column-match";
import type { ColumnTarget } from "./column-target";

/** So many suggestions help, more do not (our choice). */
const MOST = 3;
/** Counts are slips now and then, and a batch or two are mended: so many of the rows have to agree. */
const MOSTLY = 0.8;

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
  const steps = holds === "count" ? stepKeys.filter((key) => COUNTED.has(key)) : stepKeys;
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

/** The steps at which plants are mostly counted. */
const COUNTED: ReadonlySet<string> = new Set([
  "sowing",
  "germination",
  "grafting",
  "take count",
  "ready",
]);

/** Whether one column can be of an earlier step than the other: no fewer plants, or no later days. */
function ordered(one: ColumnSeen, other: ColumnSeen, holds: "day" | "count"): boolean {
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
  return agree >= MOSTLY * both;
}
