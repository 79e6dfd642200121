import { type CivilDay, daysLater } from "../dates/civil-day";
import { sentenceDay } from "../dates/day-text";
import { dueTasks, type Task } from "../due/due-tasks";
import { InputError } from "../input-error";
import { leftOutRemark, type Records } from "../records/records";
import type { Timetable } from "../timetable/timetable";
import { type ClosedDays, hundredthsOn, isClosed } from "./crew";
import { hoursOf, hundredthsAsked } from "./hundredths";
import { planWork } from "./plan-work";
import { type Proof, proofOf, type TimedTask } from "./proof";
import type { ClosedDaysReading } from "./read-closed-days";
import { type CrewReading, crewRemarks } from "./read-crew";
import { inTaskOrder, runningRounds } from "./task-parts";

export interface WorkPlanQuestion {
  readonly records: Records;
  readonly timetable: Timetable;
  readonly asOf: CivilDay;
  /** How many days to show, from the as-of day on: 1 to 366. */
  readonly days: number;
  readonly crew: CrewReading;
  readonly closedDays: ClosedDaysReading;
}

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
  /** What there is to say of it, parts of a sentence. */
  readonly remarks: readonly string[];
}

export interface WorkDay {
  readonly day: CivilDay;
  readonly isClosed: boolean;
  /** Hours that each person has, in the order of the persons. */
  readonly there: readonly number[];
}

export interface PlannedWork {
  readonly proofs: readonly Proof[];
  /** What fits nowhere, and what is late and not begun in these days. */
  readonly leftOver: readonly WorkPart[];
  /** By day and person; those of nobody are reminders, which ask for no known hours. */
  readonly placed: readonly WorkPart[];
  /** What waits until after these days, and may. */
  readonly later: readonly WorkPart[];
  readonly days: readonly WorkDay[];
  readonly persons: readonly string[];
  readonly remark: string | null;
}

const MOST_DAYS = 366;
/** Work that may wait is set into days beyond those shown, so that it waits only where it can. */
const DAYS_BEYOND = 60;

/**
 * The coming days' tasks by day and person, what does not fit into them, and the hours that are
 * there. The order of the rows of records and crew does not matter.
 *
 * @throws InputError "argument-unreadable" when days is not 1 to 366
 */
export function plannedWork(question: WorkPlanQuestion): PlannedWork {
  const { records, timetable, asOf, days, crew, closedDays } = question;
  if (!(days >= 1 && days <= MOST_DAYS)) {
    throw new InputError("argument-unreadable", `days must be 1 to ${MOST_DAYS}; found ${days}`);
  }
  const end = daysLater(asOf, days - 1);
  const tasks = [...dueTasks({ records, timetable, asOf, daysAhead: days - 1 })].sort(inTaskOrder);
  const timed = tasks.filter((task): task is TimedTask => task.hours !== null && task.hours > 0);
  const persons = crew.crew.map(({ name }) => name);
  const asked = timed.map(({ hours }) => hundredthsAsked(hours));
  const plan = planWork({
    tasks: timed.map(({ step, from, doOn, by }, at) => ({
      kind: step.key,
      from,
      by,
      asked: asked[at] as number,
      usual: doOn,
    })),
    crew: crew.crew,
    closed: closedDays.closed,
    first: asOf,
    last: daysLater(end, DAYS_BEYOND),
  });
  const piecesOf = timed.map((): (typeof plan.pieces)[number][] => []);
  for (const piece of plan.pieces) piecesOf[piece.task]?.push(piece);
  const leftOver: WorkPart[] = [];
  const placed: WorkPart[] = [];
  const later: WorkPart[] = [];
  timed.forEach((task, at) => {
    const pieces = piecesOf[at] ?? [];
    const shown = pieces.filter(({ day }) => day <= end);
    const beyond = pieces.filter(({ day }) => day > end);
    const unplaced = plan.unplaced[at] as number;
    const waiting =
      beyond.reduce((sum, { hundredths }) => sum + hundredths, 0) + (plan.after[at] as number);
    const amounts = [...shown.map(({ hundredths }) => hundredths), unplaced, waiting];
    const plants = runningRounds(amounts, task.plants ?? 0);
    const part = (
      index: number,
      { day, person }: Pick<WorkPart, "day" | "person">,
      more: readonly string[],
    ): WorkPart => ({
      day,
      task,
      person,
      plants: plants[index] as number,
      hours: hoursOf(amounts[index] as number),
      remarks: [
        ...more,
        ...lateness(task),
        ...(amounts[index] === asked[at] ? [] : [`part of ${task.plants}`]),
      ],
    });
    const nowhere = { day: null, person: null };
    shown.forEach(({ day, person }, index) => {
      placed.push(part(index, { day, person: persons[person] ?? null }, []));
    });
    if (unplaced > 0) leftOver.push(part(shown.length, nowhere, ["doesn't fit"]));
    if (waiting === 0) return;
    (task.status === "late" ? leftOver : later).push(
      part(shown.length + 1, nowhere, [`not before ${sentenceDay(daysLater(end, 1))}`]),
    );
  });
  for (const task of tasks) {
    if (task.hours !== null && task.hours !== 0) continue;
    const day = openDay(task, closedDays.closed, asOf);
    if (day <= end) placed.push(reminder(task, day));
  }
  // Sorting keeps the order of tasks among the parts of one person and day.
  placed.sort((a, b) => Number(a.day) - Number(b.day) || compare(a.person, b.person));
  const remarks = [
    leftOutRemark(records),
    ...crewRemarks(crew),
    ...closedDays.troubles,
    later.length === 0
      ? null
      : `${later.length} ${later.length === 1 ? "task" : "tasks"} in part or whole planned after ${sentenceDay(end)}`,
  ].filter((one) => one !== null);
  return {
    leftOver,
    placed,
    later,
    persons,
    proofs: plan.overloads.map((one) => proofOf(one, timed, persons)),
    days: Array.from({ length: days }, (_, at) => workDay(question, daysLater(asOf, at))),
    remark: remarks.join("; ") || null,
  };
}

function workDay({ crew, closedDays }: WorkPlanQuestion, day: CivilDay): WorkDay {
  const shut = isClosed(closedDays.closed, day);
  return {
    day,
    isClosed: shut,
    there: crew.crew.map((one) => (shut ? 0 : hoursOf(hundredthsOn(one, day)))),
  };
}

function reminder(task: Task, day: CivilDay): WorkPart {
  const missing = task.plants === null ? "plants not counted" : "no work rate in the timetable";
  const why = task.hours === 0 ? "no plants" : `hours not known: ${missing}`;
  return {
    day,
    task,
    plants: task.plants,
    hours: null,
    person: null,
    remarks: [...lateness(task), why],
  };
}

function lateness({ daysLate }: Task): string[] {
  return daysLate === 0 ? [] : [`${daysLate} ${daysLate === 1 ? "day" : "days"} late`];
}

/** The usual day, else the open day nearest to it in the window, the later first. */
function openDay({ doOn, from, by }: Task, closed: ClosedDays, asOf: CivilDay): CivilDay {
  const earliest = Math.max(from, asOf);
  const latest = Math.max(by, doOn);
  for (let away = 0; doOn + away <= latest || doOn - away >= earliest; away += 1) {
    const [later, sooner] = [daysLater(doOn, away), daysLater(doOn, -away)];
    if (later <= latest && !isClosed(closed, later)) return later;
    if (sooner >= earliest && !isClosed(closed, sooner)) return sooner;
  }
  return doOn;
}

/** Nobody comes last. */
function compare(a: string | null, b: string | null): number {
  const [left, right] = [a ?? "\uffff", b ?? "\uffff"];
  return left < right ? -1 : left > right ? 1 : 0;
}
