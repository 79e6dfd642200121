import type { ColumnSeen } from "./column-match";
import type { ColumnTarget } from "./column-target";

/**
 * Columns whose header says one thing and whose cells plainly another: "Takes counted on" over days is
 * the day, "Sown" over plants beside "Sown" over days the plants.
 */
export function settledByValues(columns: readonly ColumnSeen[]): readonly ColumnSeen[] {
  const once = columns.map(withoutContradiction);
  const hasDay = (key: string) =>
    once.some(
      ({ target, values }) =>
        target?.kind === "step" &&
        target.key === key &&
        target.what === "day" &&
        values().holds === "day",
    );
  return once.map((column) => {
    const { target, sureness } = column;
    if (sureness === 4 || target?.kind !== "step" || target.what !== "day") return column;
    if (column.begins() === "day") return column;
    const { holds, plainly } = column.values();
    if (holds !== "count" || !plainly || !hasDay(target.key)) return column;
    return { ...column, target: { ...target, what: "count" } };
  });
}

/** What the cells of a column ought to be; null where nothing speaks against it. */
function expected(target: ColumnTarget): "day" | "count" | null {
  if (target.kind === "step") return target.what;
  return isCount(target) ? "count" : null;
}

function isCount(target: ColumnTarget): boolean {
  return target.kind === "fact" && (target.fact === "culled" || target.fact === "dispatched");
}

/** Fewer cells than these may be slips. */
const FEWEST = 2;

function withoutContradiction(column: ColumnSeen): ColumnSeen {
  const { target, sureness } = column;
  if (target === null || sureness === 4 || expected(target) === column.begins()) return column;
  const leave = (...others: readonly ColumnTarget[]): ColumnSeen => ({
    ...column,
    target: null,
    sureness: 1,
    isOther: others.length === 0,
    others,
  });
  if (target.kind === "step") {
    const { holds, plainly, filled } = column.values();
    if (!plainly || filled < FEWEST) return column;
    if (target.what === "count" && holds === "day") {
      return { ...column, target: { ...target, what: "day" } };
    }
    if (holds === "text" && target.key === "grafting") return leave(...OF_GRAFTING);
    return column;
  }
  if (target.kind !== "fact") return column;
  if (isCount(target)) {
    const { holds, plainly } = column.values();
    return holds === "day" && plainly ? leave() : column;
  }
  if (target.fact === "closed") {
    const { holds, plainly, numbers } = column.values();
    const counts = holds === "count" && plainly && numbers.some((one) => (one ?? 0) > 1);
    return counts ? leave({ kind: "step", key: "ready", what: "count" }, target) : column;
  }
  return column;
}

/** What stands under "Graft" where it is a name. */
export const OF_GRAFTING: readonly ColumnTarget[] = [
  { kind: "fact", fact: "grafter" },
  { kind: "fact", fact: "variety" },
  { kind: "fact", fact: "method" },
];
