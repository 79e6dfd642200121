import type { CivilDay } from "../dates";
import type { Task } from "./due-tasks";

/** What tells in which line of a day a task stands. */
export interface LineFacts {
  /** Empty where none is written. */
  readonly place: string;
  readonly isLook: boolean;
  readonly canWait: boolean;
}

/** A line of a day: a task that the day asks for, or all that can wait, or is only looked at, in a place. */
export interface DayLine<One> {
  readonly kind: "task" | "waits" | "looks";
  readonly place: string;
  /** One, or one and more, in the order given. */
  readonly tasks: readonly One[];
}

/** Whether the usual day of a task is still to come. What is late, or has its day today, can't wait. */
export function canWait({ doOn }: Pick<Task, "doOn">, asOf: CivilDay): boolean {
  return doOn > asOf;
}

/**
 * The tasks of a day in so few lines as a foreman reads before work: each that the day asks for, late ones
 * among them, is a line; what may begin, or begins soon, and has time, is one line a place, since its window may
 * be open for many weeks; so are the looks. Every task stands in one of them.
 */
export function dayLines<One extends LineFacts>(tasks: readonly One[]): readonly DayLine<One>[] {
  const lines: DayLine<One>[] = [];
  const together = new Map<string, One[]>();
  for (const task of tasks) {
    const { place, isLook } = task;
    const kind = isLook ? "looks" : task.canWait ? "waits" : "task";
    const key = `${kind} ${place}`;
    const line = kind === "task" ? undefined : together.get(key);
    if (line !== undefined) {
      line.push(task);
      continue;
    }
    const begun = [task];
    together.set(key, begun);
    lines.push({ kind, place, tasks: begun });
  }
  const rank = { task: 0, waits: 1, looks: 2 } as const;
  return lines.sort((one, other) => rank[one.kind] - rank[other.kind]);
}
