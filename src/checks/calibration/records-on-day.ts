import { type Cell, type Grid, gridOf } from "../../core";
import type { NurseryHistory, SimulatedBatch } from "./nursery-history";
import { columnsOf, FACT_COLUMNS, STEP, STEPS } from "./simulated-steps";

/** What the table tells of one batch on a day, in plain numbers, for the rivals. */
export interface SeenBatch {
  readonly name: string;
  /** By place in STEPS; null where nothing is written. */
  readonly days: readonly (number | null)[];
  readonly counts: readonly (number | null)[];
  readonly closed: boolean;
}

/** A nursery's table as it stands on a day: nothing in it was typed in later. */
export interface NurseryState {
  readonly asOf: number;
  readonly grid: Grid;
  readonly seen: readonly SeenBatch[];
}

/** The table as it stands at the end of a day. A batch has a row once its sowing is typed in. */
export function recordsOnDay({ batches, habits }: NurseryHistory, asOf: number): NurseryState {
  const columns = [
    ...FACT_COLUMNS.first.filter((column) => column !== "Method" || habits.writesMethod),
    ...STEPS.flatMap((step, index) => (habits.kept[index] ? columnsOf(step) : [])),
    ...FACT_COLUMNS.last,
  ];
  const shown = batches.flatMap((batch) => {
    const cells = cellsOnDay(batch, asOf);
    return cells.size === 0 ? [] : [{ batch, cells }];
  });
  const rows = shown.map(({ cells }) => columns.map((column): Cell => cells.get(column) ?? ""));
  return {
    asOf,
    grid: gridOf([columns, ...rows]),
    seen: shown.map(({ batch, cells }) => seenBatch(batch.name, cells)),
  };
}

function cellsOnDay({ entries }: SimulatedBatch, asOf: number): ReadonlyMap<string, Cell> {
  const latest = new Map<string, { value: Cell; typedOn: number }>();
  for (const { column, value, typedOn } of entries) {
    if (typedOn > asOf) continue;
    const before = latest.get(column);
    if (before === undefined || typedOn >= before.typedOn) latest.set(column, { value, typedOn });
  }
  return new Map([...latest].map(([column, { value }]) => [column, value]));
}

function seenBatch(name: string, cells: ReadonlyMap<string, Cell>): SeenBatch {
  const dayIn = (column: string) => {
    const cell = cells.get(column);
    return typeof cell === "object" ? cell.day : null;
  };
  const countIn = (column: string | null) => {
    const cell = column === null ? undefined : cells.get(column);
    return typeof cell === "number" ? cell : null;
  };
  return {
    name,
    days: STEPS.map(({ dayColumn }) => dayIn(dayColumn)),
    counts: STEPS.map(({ countColumn }) => countIn(countColumn)),
    closed: cells.has("Closed"),
  };
}

/** The latest step with a day; of steps on one day the later. null when no day is written. */
export function lastStep({ days }: SeenBatch): number | null {
  let last: number | null = null;
  days.forEach((day, step) => {
    if (day !== null && (last === null || day >= (days[last] as number))) last = step;
  });
  return last;
}

/** The latest counted step with a count; null when none is written. */
export function lastCount({ counts }: SeenBatch): number | null {
  for (let step = counts.length - 1; step >= 0; step -= 1) {
    if ((counts[step] ?? null) !== null) return step;
  }
  return null;
}

/** How far a batch has come by its records. */
export type Stage = "sown only" | "grafted" | "takes counted";
export const STAGES: readonly Stage[] = ["sown only", "grafted", "takes counted"];

export function stageOf({ days, counts }: SeenBatch): Stage {
  if ((counts[STEP.takeCount] ?? null) !== null) return "takes counted";
  const reached = STEPS.some(
    (_, step) => step >= STEP.grafting && (days[step] ?? counts[step] ?? null) !== null,
  );
  return reached ? "grafted" : "sown only";
}
