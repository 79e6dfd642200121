import { type InventedTakes } from "./invented-takes";
/** What groups are evened for; "nothing" is the plain rate, judged by the same mathematics. */
export type EvenFor = "nothing" | "Variety" | "Variety+Season" | "Variety+Month";
export interface VerdictTally {
  readonly nurseries: number;
  /** Nurseries in which anyone reads above or below the rest. */
  readonly anyone: number;
  /** In which the first grafter reads below the rest. */
  readonly firstBelow: number;
  /** Readings of "too few to tell" among all, as a share. */
  readonly tooFew: number;
  /** Ranges within which the rate of all lies, where nobody differs the truth for everyone. */
  readonly held: number;
}
/** Counts what TAKE_COMPARED reads in invented nurseries. Shares are 0 to 1. */
export declare function verdictsOn(
  kind: InventedTakes,
  {
    evenFor,
    nurseries,
    firstSeed,
  }: {
    readonly evenFor: EvenFor;
    readonly nurseries: number;
    readonly firstSeed?: number;
  },
): VerdictTally;
/** Nurseries in which TAKE_REASONS reads a link of takes with who grafted, as a share. */
export declare function grafterNamed(kind: InventedTakes, nurseries: number): number;
