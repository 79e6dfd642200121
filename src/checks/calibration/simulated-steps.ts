/** The steps of the built-in cocoa method as the simulated table has them: no numbers, only names. */
export interface SimulatedStep {
  readonly name: string;
  readonly dayColumn: string;
  readonly countColumn: string | null;
}

export const STEPS: readonly SimulatedStep[] = [
  step("Sowing", "Sown", "Seeds sown"),
  step("Germination", "Germination day", "Germinated"),
  step("Grafting", "Grafted on", "Grafts made"),
  step("First release", "First release"),
  step("Bud break", "Bud break"),
  step("Take count", "Take count day", "Takes"),
  step("First flush", "First flush"),
  step("Flush hardening", "Flush hardening"),
  step("Branching", "Branching"),
  step("Union closed", "Union closed"),
  step("Ready", "Ready on", "Ready plants"),
];

/** Places in STEPS. */
export const STEP = {
  sowing: 0,
  germination: 1,
  grafting: 2,
  firstRelease: 3,
  budBreak: 4,
  takeCount: 5,
  firstFlush: 6,
  flushHardening: 7,
  branching: 8,
  unionClosed: 9,
  ready: 10,
} as const;

export const FACT_COLUMNS = {
  first: "Batch, From lot, Variety, Rootstock, Method, Place, Grafter, Scion source".split(", "),
  last: ["Culled", "Dispatched", "Closed", "Note"],
};

/** The columns of a step in a table: its day, and its plants where they are counted. */
export function columnsOf({ dayColumn, countColumn }: SimulatedStep): readonly string[] {
  return countColumn === null ? [dayColumn] : [dayColumn, countColumn];
}

function step(name: string, dayColumn: string, countColumn: string | null = null): SimulatedStep {
  return { name, dayColumn, countColumn };
}
