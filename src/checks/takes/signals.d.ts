import { type Period } from "../../core";
export interface SignalTally {
  /** Signals a year in the year after two quiet ones, where nothing changed: any reading but usual. */
  readonly falseAYear: number;
  /** Share of nurseries in which a fall is seen within a year. */
  readonly seen: number;
  /** Of those that see it: batches, and days, from the fall to the first signal, on average. */
  readonly batches: number;
  readonly days: number;
}
/**
 * How soon the chart of TAKE_TREND shows a fall of 15 points, looked at after every batch, and how
 * often it shows something where nothing is.
 */
export declare function signalsOn(
  {
    batchesAYear,
    season,
  }: {
    readonly batchesAYear: number;
    readonly season: number;
  },
  period: Period,
  nurseries: number,
): SignalTally;
