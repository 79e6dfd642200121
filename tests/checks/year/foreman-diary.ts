import type { CivilDay } from "../../../src/core/dates";
import type { Task } from "../../../src/core/due";
import { dayWords } from "../../../src/wording/days";
import { recordsRemarks } from "../../../src/wording/records";
import { type Deed, doneOn, type TrueBatch } from "./invented-year";
import { dayOf, type Morning } from "./nursery-book";

/** What a morning's due list says, in the order in which a foreman wants it. */
export interface Page {
  /** Late, with how late; a line a task. */
  readonly late: readonly string[];
  /** On the list for the first time at its usual day; a line a step. */
  readonly fresh: readonly string[];
  /** Begun or waiting since an earlier morning; one line. */
  readonly open: string;
  /** May be done, and has time; one line. */
  readonly early: string;
  /** Only to be looked at; one line. */
  readonly looks: string;
  /** Care by place, and what the list says besides. */
  readonly care: readonly string[];
}

/** A job or a count whose usual day has come, or that is late. */
export const isForToday = ({ step, doOn }: Task, today: CivilDay): boolean =>
  step.kind !== "look" && doOn <= today;

/** @param known what earlier mornings had for the day, by keys of tasks; this morning's are added */
export function pageOf({ due }: Morning, at: number, known: Set<string>): Page {
  const today = dayOf(at);
  const late: string[] = [];
  const fresh: Task[] = [];
  const open: Task[] = [];
  for (const task of due.rows) {
    if (!isForToday(task, today)) continue;
    const { step, batch, daysLate, status } = task;
    const key = `${batch} ${step.key}`;
    if (status === "late") {
      const days = `${daysLate} ${daysLate === 1 ? "day" : "days"}`;
      late.push(`**Late by ${days}: ${step.name} of ${batch}**, ${task.place}, ${plantsOf(task)}`);
    } else (known.has(key) ? open : fresh).push(task);
    known.add(key);
  }
  const early = due.rows.filter((task) => task.step.kind !== "look" && !isForToday(task, today));
  const looks = due.rows.filter(({ step }) => step.kind === "look");
  return {
    late,
    fresh: byStep(fresh, (task) => `${named(task)}, by ${shortDay(task.by)}`),
    open: byStep(open, ({ batch }) => batch).join("; "),
    early: byStep(early, ({ batch }) => batch).join("; "),
    looks: byStep(looks, ({ batch }) => batch).join("; "),
    care: due.remarks.map((one) => recordsRemarks([one], "page") ?? ""),
  };
}

export function linesOf({ late, fresh, open, early, looks, care }: Page): readonly string[] {
  const one = (said: string, list: string) => (list === "" ? [] : [`${said}: ${list}`]);
  return [
    ...[...late, ...fresh, ...one("Still to do", open), ...care],
    ...[...one("Can wait", early), ...one("Look for", looks)],
  ];
}

/**
 * The year as one text: a heading a morning, or several where nothing changed. What can wait and what is to be
 * looked for is told when it changes, and on Mondays.
 */
export function diaryOf(mornings: readonly Morning[], batches: readonly TrueBatch[]): string {
  const known = new Set<string>();
  const pages: { from: number; to: number; text: string }[] = [];
  let told = { early: "", looks: "" };
  mornings.forEach((morning, index) => {
    const at = index + 1;
    const deeds = deedsIn(doneOn(batches, at - 1));
    const page = pageOf(morning, at, known);
    const isNew = (key: "early" | "looks") => isMonday(at) || page[key] !== told[key];
    const early = isNew("early") ? page.early : "";
    const looks = isNew("looks") ? page.looks : "";
    told = page;
    const lines = linesOf({ ...page, early, looks }).map((line) => `- ${line}`);
    const text = [
      ...(deeds === "" ? [] : [`Yesterday: ${deeds}.`, ...(lines.length === 0 ? [] : [""])]),
      ...lines,
    ].join("\n");
    const last = pages[pages.length - 1];
    if (last !== undefined && deeds === "" && text === withoutDeeds(last.text)) last.to = at;
    else pages.push({ from: at, to: at, text });
  });
  return pages
    .map(({ from, to, text }) => {
      const days = [...new Set([from, to])]
        .map((at) => `${WEEKDAYS[at % 7]} ${dayWords(dayOf(at))}`)
        .join(" to ");
      return `## ${days}\n\n${text === "" ? "Nothing new." : text}\n`;
    })
    .join("\n");
}

/** From a Thursday, as the year begins. */
const WEEKDAYS = ["Thu", "Fri", "Sat", "Sun", "Mon", "Tue", "Wed"];
const isMonday = (at: number) => WEEKDAYS[at % 7] === "Mon";
/** The year is said in the heading. */
const shortDay = (day: CivilDay) => dayWords(day).replace(/ \d{4}$/, "");

const withoutDeeds = (text: string) => text.replace(/^Yesterday:.*\n\n?/, "");

const plantsOf = ({ plants, isEstimate }: Task) =>
  `${isEstimate ? "about " : ""}${plants === null ? "?" : Math.round(plants)} plants`;

const named = (task: Task) => `${task.batch} (${task.place}, ${plantsOf(task)})`;

/** Tasks by step, in the order of the list: a text a step. */
function byStep(tasks: readonly Task[], say: (task: Task) => string): readonly string[] {
  const steps = new Map<string, string[]>();
  for (const task of tasks) {
    const said = steps.get(task.step.name) ?? [];
    steps.set(task.step.name, [...said, say(task)]);
  }
  return [...steps].map(([step, said]) => `${step}: ${said.join(", ")}`);
}

function deedsIn(deeds: readonly Deed[]): string {
  return deeds
    .map(({ batch, what, count }) => {
      const said = what.replace("{}", batch);
      return count === null ? said : `${said} (${count} plants)`;
    })
    .join(", ");
}
