import type { Person, TimeOff } from "./crew";
import type { Week } from "./read-week";

/** A row of the crew's table, read. */
export interface CrewRow {
  readonly name: string;
  /** Kinds of work; null for all. */
  readonly skills: ReadonlySet<string> | null;
  /** Null where the row says none: a further time off of a person above. */
  readonly hundredthsADay: number | null;
  /** Null where the row says nothing of weekdays. */
  readonly weeks: readonly Week[];
  readonly off: readonly TimeOff[];
}

/** A name alone when no row of the person says hours. */
export function personOf(rows: readonly CrewRow[]): Person | string {
  const name = rows.map((row) => row.name).sort()[0] as string;
  const hours = rows.flatMap(({ hundredthsADay }) => hundredthsADay ?? []);
  if (hours.length === 0) return name;
  const all = rows.every(({ skills }) => skills === null);
  const week = weekOf(rows);
  return {
    name,
    skills: all ? null : new Set(rows.flatMap(({ skills }) => [...(skills ?? [])])),
    hundredthsADay: Math.min(...hours),
    ...(week && { week }),
    off: rows.flatMap(({ off }) => off),
  };
}

/**
 * Hundredths of an hour by weekday, Monday first; null where no row tells of weekdays. Rows with hours
 * each tell of their own weekdays ("Mon–Fri 8" and "Sat 4"); one without hours narrows the others.
 */
function weekOf(rows: readonly CrewRow[]): readonly number[] | null {
  if (rows.every(({ weeks }) => weeks.length === 0)) return null;
  const on = ({ weeks }: CrewRow, weekday: number, whole: number): number =>
    Math.min(
      whole,
      ...weeks.map((week) => {
        const part = week[weekday] as Week[number];
        return "share" in part ? Math.floor(whole * part.share) : part.hundredths;
      }),
    );
  return [0, 1, 2, 3, 4, 5, 6].map((weekday) => {
    const told = rows.flatMap((row) =>
      row.hundredthsADay === null ? [] : on(row, weekday, row.hundredthsADay),
    );
    const worked = told.filter((one) => one > 0);
    const whole = worked.length === 0 ? 0 : Math.min(...worked);
    const narrow = rows.filter(({ hundredthsADay }) => hundredthsADay === null);
    return Math.min(whole, ...narrow.map((row) => on(row, weekday, whole)));
  });
}
