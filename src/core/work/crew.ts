import { type CivilDay, isoWeekday } from "../dates";

/** Days from one to another, both within; null where there is no end. */
export interface DayStretch {
  readonly from: CivilDay | null;
  readonly to: CivilDay | null;
}

/** Someone whose hours can be planned. */
export interface Person {
  readonly name: string;
  /** Keys of the steps that the person does; null for all. See words/step-key.ts. */
  readonly skills: ReadonlySet<string> | null;
  /** On a day of work, hundredths of an hour. */
  readonly hundredthsADay: number;
  readonly off: readonly DayStretch[];
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
  return person.off.some((one) => within(one, day)) ? 0 : person.hundredthsADay;
}

export function canDo(person: Person, stepKey: string): boolean {
  return person.skills === null || person.skills.has(stepKey);
}

function within({ from, to }: DayStretch, day: CivilDay): boolean {
  return (from === null || from <= day) && (to === null || day <= to);
}
