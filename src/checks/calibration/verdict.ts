import type { Who } from "./ranges";
import type { Quantity } from "./score-nursery";
import type { CoverLine } from "./tally";

export interface Limits {
  readonly goal: readonly [number, number];
  readonly hard: readonly [number, number];
}

/**
 * Between which covers a level must lie. A hard limit is set for the usual level, 0.8, alone; rows
 * of 0.95 outside their goal are marked.
 */
const LIMITS: ReadonlyMap<number, Limits> = new Map([
  [0.8, { goal: [0.78, 0.82], hard: [0.74, 0.88] }],
  [0.95, { goal: [0.93, 0.97], hard: [0, 1] }],
]);

export type CoverVerdict = "in goal" | "outside goal" | "outside hard limit";

export function coverVerdict(cover: number, level: number): CoverVerdict {
  const { goal, hard } = limitsOf(level);
  if (cover < hard[0] || cover > hard[1]) return "outside hard limit";
  return cover < goal[0] || cover > goal[1] ? "outside goal" : "in goal";
}

export function limitsOf(level: number): Limits {
  const limits = LIMITS.get(level);
  if (limits === undefined) throw new Error(`no limits for level ${level}`);
  return limits;
}

export interface WidthVerdict {
  readonly quantity: Quantity;
  /** Rivals that cover as well with ranges as narrow as ours or narrower. */
  readonly beatenBy: readonly Who[];
  /** Rivals that cover as well, beaten or not. */
  readonly asGood: readonly Who[];
}

/**
 * Whether our ranges are narrower than those of each rival that covers as well, on the batches of
 * which both gave a range. A rival covers as well when its cover reaches the goal's lower end, or
 * ours if that is lower.
 */
export function widthVerdict(
  quantity: Quantity,
  level: number,
  rivals: ReadonlyMap<Who, CoverLine | null>,
): WidthVerdict {
  const asGood: Who[] = [];
  const beatenBy: Who[] = [];
  for (const [who, line] of rivals) {
    if (line === null || line.cover < Math.min(limitsOf(level).goal[0], line.oursCover)) continue;
    asGood.push(who);
    if (line.width <= line.oursWidth) beatenBy.push(who);
  }
  return { quantity, asGood, beatenBy };
}
