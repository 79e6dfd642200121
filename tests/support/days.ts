import type { CivilDay } from "../../src/core/dates/civil-day";

const MILLISECONDS_A_DAY = 86_400_000;

/** The day of an ISO text by the runtime's own calendar, so that tests don't lean on ours. */
export function day(iso: string): CivilDay {
  const milliseconds = Date.parse(`${iso}T00:00:00Z`);
  if (Number.isNaN(milliseconds)) throw new Error(`${iso} is no day`);
  return (milliseconds / MILLISECONDS_A_DAY) as CivilDay;
}

/** The ISO text of a day by the runtime's own calendar; null stays null. */
export function iso(civilDay: number | null): string | null {
  if (civilDay === null) return null;
  return new Date(civilDay * MILLISECONDS_A_DAY).toISOString().slice(0, 10);
}
