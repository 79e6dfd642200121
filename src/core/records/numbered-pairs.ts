import type { ColumnSeen } from "./column-match";
import type { ColumnTarget } from "./column-target";
import { numberedHeader } from "./numbered-header";

/** What "date 1, nb 1, date 2 ..." are of, in their order, where a nursery numbers what it does. */
const STEPS: readonly (readonly string[])[] = [
  ["sowing", "grafting"],
  ["sowing", "grafting", "take count"],
  ["sowing", "germination", "grafting", "take count"],
];

/**
 * Numbered pairs of day and count as the steps that every nursery writes down, the first the start. Only
 * where the numbers run from 1 and each has both, the cells hold what the header says, and none of the steps
 * has a column of its own.
 */
export function inPairs(matches: readonly ColumnSeen[]): (column: ColumnSeen) => ColumnSeen {
  const found = matches.flatMap((column) => {
    const numbered = column.target === null ? numberedHeader(column.header) : null;
    const { holds } = column.values();
    return numbered !== null && holds === numbered.what ? [{ column, numbered }] : [];
  });
  const pairs = found.length / 2;
  const steps = STEPS.find((some) => some.length === pairs);
  if (steps === undefined) return (column) => column;
  const isWhole = steps.every((_, at) =>
    (["day", "count"] as const).every((what) =>
      found.some(({ numbered }) => numbered.what === what && numbered.number === at + 1),
    ),
  );
  const isHeld = matches.some(
    ({ target }) => target?.kind === "step" && steps.includes(target.key),
  );
  if (!isWhole || isHeld) return (column) => column;
  return (column) => {
    const own = found.find((one) => one.column.column === column.column);
    if (own === undefined) return column;
    const { number, what } = own.numbered;
    const target: ColumnTarget = { kind: "step", key: steps[number - 1] as string, what };
    return { ...column, target, others: [] };
  };
}
