import { type LengthShape } from "./chance";
/** What sort of nursery to invent. */
export interface NurseryKind {
  /** Finished batches that it is wanted at; sets how busy it is. */
  readonly pastBatches: number;
  readonly varieties: "alike" | "unlike";
}
export interface Variety {
  readonly name: string;
  /** Added to the log odds of a take, and of a taken plant becoming ready. */
  readonly take: number;
  readonly ready: number;
  /** Added to the log of every length after grafting. */
  readonly slow: number;
}
/** What is true of one invented nursery, and which its records show only in part. */
export interface NurseryTruth {
  readonly seed: number;
  /** A civil day. */
  readonly firstDay: number;
  /** Days from one sowing to the next in the first year; growth makes them fewer. */
  readonly gapDays: number;
  readonly growthPerYear: number;
  readonly usualSeeds: number;
  readonly varieties: readonly Variety[];
  readonly grafters: readonly {
    readonly name: string;
    readonly take: number;
  }[];
  /** Log odds of a plant passing each counted step, before any effect. */
  readonly logOdds: {
    readonly germinated: number;
    readonly grafted: number;
    readonly taken: number;
    readonly ready: number;
  };
  /** Standard deviation of a batch's own log odds at one step. */
  readonly batchNoise: number;
  readonly badBatches: number;
  readonly lostBatches: number;
  /** Change of the log odds of a take in a year, as hands learn or leave. */
  readonly drift: number;
  /** Added to the log of lengths: the nursery is slower or faster than the timetable. */
  readonly slow: {
    readonly germination: number;
    readonly seedling: number;
    readonly graft: number;
  };
  /** A smooth wave through the year; its height in log lengths and in log odds. */
  readonly season: {
    readonly phase: number;
    readonly slow: number;
    readonly odds: number;
  };
  readonly shape: LengthShape;
  /** Batch-to-batch variation of lengths: below 1 for a steady nursery, above for a fitful one. */
  readonly fitfulness: number;
  /** Share of batches that stand still for a while at some step: a mixture of two sorts. */
  readonly stalls: number;
  /** Plants are looked over every so many days; a step is noted on the first such day after it. */
  readonly inspection: {
    readonly everyDays: number;
    readonly offset: number;
  };
  readonly takesCountedAfter: number;
}
/**
 * Invents a nursery. Every figure is our choice of what nurseries plausibly differ by; none comes
 * from a real one, and none is read from the timetable or from the model that is being checked.
 */
export declare function nurseryTruth(
  { pastBatches, varieties }: NurseryKind,
  seed: number,
): NurseryTruth;
/** The season's wave on a day, -1 to 1. */
export declare function seasonOn({ season }: NurseryTruth, day: number): number;
