import type { Kinds } from "../answer";
import { type CivilDay, daysLater } from "../dates";
import { dueTasks, type Task } from "../due";
import { InputError } from "../faults";
import type { Records } from "../records";
import type { Timetable } from "../timetable";
import { type ClosedDays, hundredthsOn, isClosed, jobKind } from "./crew";
import { hoursOf, hundredthsAsked } from "./hundredths";
import { planWork } from "./plan-work";
import { type Proof, proofOf, type TimedTask } from "./proof";
import type { ClosedDaysReading } from "./read-closed-days";
import { type CrewReading, crewRemarks } from "./read-crew";
import { inTaskOrder } from "./task-parts";
import { lateness, partsOf, type WorkPart, type WorkPieces } from "./work-part";
import type { WorkRemark } from "./work-remark";

export interface WorkPlanQuestion {
  readonly records: Records;
  readonly timetable: Timetable;
  readonly asOf: CivilDay;
  /** How many days to show, from the as-of day on: 1 to 366. */
  readonly days: number;
  readonly crew: CrewReading;
  readonly closedDays: ClosedDaysReading;
  /** As in DueQuestion. */
  readonly withoutLooks?: boolean;
}

/** The columns of a row of the plan. */
export const WORK_COLUMNS = {
  day: "day",
  task: "text",
  batch: "text",
  place: "text",
  plants: "count",
  hours: "hours",
  person: "text",
  by: "day",
  remarks: "text",
} as const satisfies Kinds;

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
  readonly remarks: readonly WorkRemark[];
}

const MOST_DAYS = 366;
/** Work that may wait is set into days beyond those shown, so that it waits only where it can. */
const DAYS_BEYOND = 60;

/**
 * The coming days' tasks by day and person, what does not fit into them, and the hours that are
 * there. The order of the rows of records and crew does not matter.
 *
 * @throws InputError "days-out-of-range"
 */
export function plannedWork(question: WorkPlanQuestion): PlannedWork {
  const { records, timetable, asOf, days, crew, closedDays, withoutLooks = false } = question;
  if (!(days >= 1 && days <= MOST_DAYS)) {
    throw new InputError({ code: "days-out-of-range", most: MOST_DAYS, found: days });
  }
  const end = daysLater(asOf, days - 1);
  const due = dueTasks({ records, timetable, asOf, daysAhead: days - 1, withoutLooks });
  const tasks = [...due.rows].sort(inTaskOrder);
  const timed = tasks.filter((task): task is TimedTask => task.hours !== null && task.hours > 0);
  const persons = crew.crew.map(({ name }) => name);
  const asked = timed.map(({ hours }) => hundredthsAsked(hours));
  const plan = planWork({
    tasks: timed.map(({ step, method, from, doOn, by }, at) => ({
      kind: jobKind(step.key, method),
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
  const piecesOf = timed.map((): WorkPieces[number][] => []);
  for (const piece of plan.pieces) piecesOf[piece.task]?.push(piece);
  const parts = timed.map((task, at) =>
    partsOf(task, {
      pieces: piecesOf[at] ?? [],
      asked: asked[at] as number,
      unplaced: plan.unplaced[at] as number,
      after: plan.after[at] as number,
      end,
      persons,
    }),
  );
  const leftOver = parts.flatMap((one) => one.leftOver);
  const placed = parts.flatMap((one) => one.placed);
  const later = parts.flatMap((one) => one.later);
  for (const task of tasks) {
    if (task.hours !== null && task.hours !== 0) continue;
    const day = openDay(task, closedDays.closed, asOf);
    if (day <= end) placed.push(reminder(task, day));
  }
  // Sorting keeps the order of tasks among the parts of one person and day.
  placed.sort((a, b) => Number(a.day) - Number(b.day) || compare(a.person, b.person));
  const left = hoursLeft(plan.pieces, question);
  const remarks: WorkRemark[] = [...due.remarks, ...crewRemarks(crew), ...closedDays.troubles];
  if (later.length > 0) remarks.push({ code: "planned-later", tasks: later.length, end });
  return {
    leftOver,
    placed,
    later,
    persons,
    proofs: plan.overloads.map((one) => proofOf(one, { timed, names: persons, left })),
    days: Array.from({ length: days }, (_, at) => workDay(question, daysLater(asOf, at))),
    remarks,
  };
}

/** What a person has left of a day beside the planned pieces, in hundredths of hours; 0 on closed days. */
function hoursLeft(
  pieces: WorkPieces,
  { crew, closedDays }: WorkPlanQuestion,
): (person: number, day: CivilDay) => number {
  const worked = new Map<string, number>();
  for (const { person, day, hundredths } of pieces) {
    const key = `${person} ${day}`;
    worked.set(key, (worked.get(key) ?? 0) + hundredths);
  }
  return (person, day) => {
    const one = crew.crew[person];
    if (one === undefined || isClosed(closedDays.closed, day)) return 0;
    return hundredthsOn(one, day) - (worked.get(`${person} ${day}`) ?? 0);
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
  const missing = task.plants === null ? "not-counted" : "no-work-rate";
  const code = task.hours === 0 ? "no-plants" : missing;
  return {
    day,
    task,
    plants: task.plants,
    hours: null,
    person: null,
    remarks: [...lateness(task), { code }],
  };
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
