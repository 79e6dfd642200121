/** The steps of the built-in cocoa method as the simulated table has them: no numbers, only names. */
export interface SimulatedStep {
  readonly name: string;
  readonly dayColumn: string;
  readonly countColumn: string | null;
}
export declare const STEPS: readonly SimulatedStep[];
/** Places in STEPS. */
export declare const STEP: {
  readonly sowing: 0;
  readonly germination: 1;
  readonly grafting: 2;
  readonly firstRelease: 3;
  readonly budBreak: 4;
  readonly takeCount: 5;
  readonly firstFlush: 6;
  readonly flushHardening: 7;
  readonly branching: 8;
  readonly unionClosed: 9;
  readonly ready: 10;
};
export declare const FACT_COLUMNS: {
  readonly first: readonly [
    "Batch",
    "From lot",
    "Variety",
    "Rootstock",
    "Method",
    "Place",
    "Grafter",
    "Scion source",
  ];
  readonly last: readonly ["Culled", "Dispatched", "Closed", "Note"];
};
