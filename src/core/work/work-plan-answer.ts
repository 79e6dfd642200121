import { type Answer, type AnswerValue, columns } from "../answer";
import { type CivilDay, daysLater } from "../dates/civil-day";
import { sentenceDay } from "../dates/day-text";
import { dueTasks, type Task } from "../due/due-answer";
import { InputError } from "../input-error";
import { leftOutRemark, type Records } from "../records/records";
import type { Timetable } from "../timetable/timetable";
import { type ClosedDays, isClosed } from "./crew";
import { hoursOf, hundredthsAsked } from "./hundredths";
import type { Overload } from "./overloads";
import { planWork } from "./plan-work";
import type { ClosedDaysReading } from "./read-closed-days";
import type { CrewReading } from "./read-crew";
import { inTaskOrder, runningRounds } from "./task-parts";

const COLUMNS = columns({
  Day: "day",
  Task: "text",
  Batch: "text",
  Place: "text",
  Plants: "count",
  Hours: "hours",
  Person: "text",
  By: "day",
  Remark: "text",
});

export interface WorkPlanQuestion {
  readonly records: Records;
  readonly timetable: Timetable;
  readonly asOf: CivilDay;
  /** How many days to show, from the as-of day on: 1 to 366. */
  readonly days: number;
  readonly crew: CrewReading;
  readonly closedDays: ClosedDaysReading;
}

const MOST_DAYS = 366;
/** Work that may wait is set into days beyond those shown, so that it waits only where it can. */
const DAYS_BEYOND = 60;
const MOST_NAMES = 4;

type TimedTask = Task & { readonly hours: number };

/**
 * The coming days' tasks by day and person. On top what doesn't fit: a row for each overload, which
 * adds up what is asked and what is there, then a row without a day for each task that is left over
 * or late and not begun in these days. The order of the rows of records and crew does not matter.
 *
 * @throws InputError "argument-unreadable" when days is not 1 to 366
 */
export function workPlanAnswer(question: WorkPlanQuestion): Answer {
  const { records, timetable, asOf, days, crew, closedDays } = question;
  if (!(days >= 1 && days <= MOST_DAYS)) {
    throw new InputError("argument-unreadable", `days must be 1 to ${MOST_DAYS}; found ${days}`);
  }
  const end = daysLater(asOf, days - 1);
  const tasks = [...dueTasks({ records, timetable, asOf, daysAhead: days - 1 })].sort(inTaskOrder);
  const timed = tasks.filter((task): task is TimedTask => task.hours !== null && task.hours > 0);
  const names = crew.crew.map(({ name }) => name);
  const asked = timed.map(({ hours }) => hundredthsAsked(hours));
  const plan = planWork({
    tasks: timed.map(({ step, from, doOn, by }, at) => ({
      ...{ kind: step.key, from, by, asked: asked[at] as number },
      usual: doOn,
    })),
    crew: crew.crew,
    closed: closedDays.closed,
    first: asOf,
    last: daysLater(end, DAYS_BEYOND),
  });
  const piecesOf = timed.map((): (typeof plan.pieces)[number][] => []);
  for (const piece of plan.pieces) piecesOf[piece.task]?.push(piece);
  const leftOver: AnswerValue[][] = [];
  const placed: AnswerValue[][] = [];
  let later = 0;
  timed.forEach((task, at) => {
    const pieces = piecesOf[at] ?? [];
    const shown = pieces.filter(({ day }) => day <= end);
    const beyond = pieces.filter(({ day }) => day > end);
    const unplaced = plan.unplaced[at] as number;
    const waiting =
      beyond.reduce((sum, { hundredths }) => sum + hundredths, 0) + (plan.after[at] as number);
    const amounts = [...shown.map(({ hundredths }) => hundredths), unplaced, waiting];
    const plants = runningRounds(amounts, task.plants ?? 0);
    const row = (
      day: CivilDay | null,
      part: number,
      person: string | null,
      said: readonly string[],
    ): AnswerValue[] => {
      const isPart = amounts[part] !== asked[at];
      const all = [...said, ...lateness(task), ...(isPart ? [`part of ${task.plants}`] : [])];
      return [
        ...[day, task.step.name, task.batch, task.place || null, plants[part] as number],
        ...[hoursOf(amounts[part] as number), person, task.by, all.join("; ") || null],
      ];
    };
    shown.forEach(({ day, person }, part) => {
      placed.push(row(day, part, names[person] ?? null, []));
    });
    if (unplaced > 0) leftOver.push(row(null, shown.length, null, ["doesn't fit"]));
    if (waiting === 0) return;
    if (task.status === "late") {
      leftOver.push(
        row(null, shown.length + 1, null, [`not before ${sentenceDay(daysLater(end, 1))}`]),
      );
    } else later += 1;
  });
  const reminders = tasks.filter(({ hours }) => hours === null || hours === 0);
  for (const task of reminders) {
    const day = openDay(task, closedDays.closed, asOf);
    if (day > end) continue;
    const why = task.plants === null ? "plants not counted" : "no work rate in the timetable";
    placed.push([
      ...[day, task.step.name, task.batch, task.place || null, task.plants, null, null, task.by],
      [...lateness(task), task.hours === 0 ? "no plants" : `hours not known: ${why}`].join("; "),
    ]);
  }
  // Sorting keeps the order of tasks among the rows of one person and day.
  placed.sort((a, b) => Number(a[0]) - Number(b[0]) || compare(a[6], b[6]));
  const proofs = plan.overloads.map((one) => proofRow(one, timed, names));
  const remarks = [
    leftOutRemark(records),
    ...crew.troubles,
    ...closedDays.troubles,
    later === 0
      ? null
      : `${later} ${later === 1 ? "task" : "tasks"} in part or whole planned after ${sentenceDay(end)}`,
  ].filter((one) => one !== null);
  return {
    columns: COLUMNS,
    rows: [...proofs, ...leftOver, ...placed],
    remark: remarks.join("; ") || null,
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

/** The hours stand in the sentence alone, so that the column adds up to the work. */
function proofRow(
  { tasks, from, to, persons, asked, there, short }: Overload,
  timed: readonly TimedTask[],
  names: readonly string[],
): AnswerValue[] {
  const inIt = tasks.map((at) => timed[at] as TimedTask);
  const list = (all: readonly string[]) => {
    const one = [...new Set(all)];
    const more = one.length - MOST_NAMES;
    return `${one.slice(0, MOST_NAMES).join(", ")}${more > 0 ? ` and ${more} more` : ""}`;
  };
  const window = from === to ? sentenceDay(from) : `${sentenceDay(from)} to ${sentenceDay(to)}`;
  const who = persons.length === 0 ? "nobody can do them" : `${hoursOf(there)} hours are there`;
  const sum = `${hoursOf(asked)} hours are asked, ${who}`;
  const mend = `${hoursOf(short)} hours more in these days are the fewest that mend it`;
  return [
    ...[null, list(inIt.map(({ step }) => step.name)), list(inIt.map(({ batch }) => batch))],
    ...[null, null, null, list(persons.map((at) => names[at] ?? "")) || null, to],
    `Too much for these days: ${window}: ${sum}; ${mend}`,
  ];
}

function compare(a: AnswerValue | undefined, b: AnswerValue | undefined): number {
  const [left, right] = [a ?? "\uffff", b ?? "\uffff"];
  return left < right ? -1 : left > right ? 1 : 0;
}
