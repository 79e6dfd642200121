import { type CivilDay, isoWeekday } from "../dates";

/** Days from one to another, both within; null where there is no end. */
export interface DayStretch {
  readonly from: CivilDay | null;
  readonly to: CivilDay | null;
}

/** A time off: whole days, or half of each. */
export interface TimeOff extends DayStretch {
  readonly isHalf?: true;
}

/** Someone whose hours can be planned. */
export interface Person {
  readonly name: string;
  /** Kinds of work that the person does; null for all. A step's key (words/step-key.ts) is the step of any method. */
  readonly skills: ReadonlySet<string> | null;
  /** On a day of work, hundredths of an hour. */
  readonly hundredthsADay: number;
  /** The same by weekday, Monday first, where they differ; left out where all are alike. */
  readonly week?: readonly number[];
  readonly off: readonly TimeOff[];
}

/** Days on which nobody works. */
export interface ClosedDays {
  readonly stretches: readonly DayStretch[];
  /** ISO weekdays, 1 for Monday to 7 for Sunday. */
  readonly weekdays: ReadonlySet<number>;
}

export const NEVER_CLOSED: ClosedDays = { stretches: [], weekdays: new Set() };

export function isClosed(closed: ClosedDays, day: CivilDay): boolean {
  return closed.weekdays.has(isoWeekday(day)) || closed.stretches.some((one) => within(one, day));
}

/** What a person has on a day that is not closed, hundredths of an hour. */
export function hundredthsOn(person: Person, day: CivilDay): number {
  const off = person.off.filter((one) => within(one, day));
  const whole = person.week?.[isoWeekday(day) - 1] ?? person.hundredthsADay;
  if (off.length === 0) return whole;
  // Two halves, such as a morning and an afternoon, are the day.
  return off.length === 1 && off[0]?.isHalf ? Math.floor(whole / 2) : 0;
}

/** A kind of work: a step of one method. */
export function jobKind(stepKey: string, method: string): string {
  return `${stepKey}\n${method}`;
}

/** @param kind as jobKind makes it, or a step's key alone */
export function canDo({ skills }: Person, kind: string): boolean {
  return skills === null || skills.has(kind) || skills.has(kind.split("\n", 1)[0] as string);
}

function within({ from, to }: DayStretch, day: CivilDay): boolean {
  return (from === null || from <= day) && (to === null || day <= to);
}
