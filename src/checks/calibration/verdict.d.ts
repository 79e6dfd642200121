import type { Who } from "./ranges";
import type { Quantity } from "./score-nursery";
import type { CoverLine } from "./tally";
export interface Limits {
  readonly goal: readonly [number, number];
  readonly hard: readonly [number, number];
}
export type CoverVerdict = "in goal" | "outside goal" | "outside hard limit";
export declare function coverVerdict(cover: number, level: number): CoverVerdict;
export declare function limitsOf(level: number): Limits;
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
export declare function widthVerdict(
  quantity: Quantity,
  level: number,
  rivals: ReadonlyMap<Who, CoverLine | null>,
): WidthVerdict;
