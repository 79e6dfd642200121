import { type CivilDay, daysLater } from "../dates";
import type { Task } from "../due";
import { totalOf } from "../mathematics";
import { hoursOf } from "./hundredths";
import type { planWork } from "./plan-work";
import type { TimedTask } from "./proof";
import { runningRounds } from "./task-parts";
import type { PartRemark } from "./work-remark";

/** A task or a part of one: who does it on which day, or why nobody does. */
export interface WorkPart {
  /** Null for what is set into none of the days. */
  readonly day: CivilDay | null;
  readonly task: Task;
  /** Null when never counted. */
  readonly plants: number | null;
  /** Null when not known, or when there is nothing to do. */
  readonly hours: number | null;
  readonly person: string | null;
  readonly remarks: readonly PartRemark[];
}

export type WorkPieces = ReturnType<typeof planWork>["pieces"];

/** The parts of one task. */
interface TaskParts {
  /** What fits nowhere, and what is late and not begun in these days. */
  readonly leftOver: readonly WorkPart[];
  readonly placed: readonly WorkPart[];
  /** What waits until after these days, and may. */
  readonly later: readonly WorkPart[];
}

/** What the plan has of one task, in hundredths of hours. */
interface TaskPlan {
  readonly pieces: WorkPieces;
  readonly asked: number;
  readonly unplaced: number;
  /** What waits until after all days that were planned. */
  readonly after: number;
  /** The last day that is shown. */
  readonly end: CivilDay;
  readonly persons: readonly string[];
}

/** A task's plants and hours, in a part for each person and day, and for what is not done in these days. */
export function partsOf(
  task: TimedTask,
  { pieces, asked, unplaced, after, end, persons }: TaskPlan,
): TaskParts {
  const shown = pieces.filter(({ day }) => day <= end);
  const beyond = pieces.filter(({ day }) => day > end);
  const waiting = totalOf(beyond.map(({ hundredths }) => hundredths)) + after;
  const amounts = [...shown.map(({ hundredths }) => hundredths), unplaced, waiting];
  const plants = runningRounds(amounts, task.plants ?? 0);
  const part = (
    index: number,
    { day, person }: Pick<WorkPart, "day" | "person">,
    more: readonly PartRemark[],
  ): WorkPart => ({
    day,
    task,
    person,
    plants: plants[index] as number,
    hours: hoursOf(amounts[index] as number),
    remarks: [
      ...more,
      ...lateness(task),
      ...(amounts[index] === asked ? [] : [{ code: "part-of", plants: task.plants ?? 0 } as const]),
    ],
  });
  const nowhere = { day: null, person: null };
  const waits =
    waiting === 0
      ? []
      : [part(shown.length + 1, nowhere, [{ code: "not-before", day: daysLater(end, 1) }])];
  const isLate = task.status === "late";
  return {
    placed: shown.map(({ day, person }, index) =>
      part(index, { day, person: persons[person] ?? null }, []),
    ),
    leftOver: [
      ...(unplaced > 0 ? [part(shown.length, nowhere, [{ code: "does-not-fit" }])] : []),
      ...(isLate ? waits : []),
    ],
    later: isLate ? [] : waits,
  };
}

export function lateness({ daysLate }: Task): PartRemark[] {
  return daysLate === 0 ? [] : [{ code: "days-late", days: daysLate }];
}
