import { type CivilDay, daysLater, yearMonthDay } from "../dates";
import type { Task } from "./due-tasks";

/** What a person reads of an entry in a calendar. */
export interface CalendarWords {
  readonly summary: string;
  readonly description: string;
}

export interface CalendarEntry extends CalendarWords {
  readonly task: Task;
}

/**
 * The due list as a calendar file: one all-day entry a task, from the day to start to the last.
 *
 * @param last one more entry, of the day `asOf`; null for none
 * @param asOf stamps the entries, since a calendar wants to know when it was made
 *
 * Source: RFC 5545 (iCalendar), sections 3.1 (folding), 3.3.11 (text), 3.6.1 (events). The end of
 *   an all-day event is the day after its last.
 */
export function calendarText(
  entries: readonly CalendarEntry[],
  { asOf, last }: { readonly asOf: CivilDay; readonly last: CalendarWords | null },
): string {
  const lines = [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//Nursery batches//Due list//EN",
    "CALSCALE:GREGORIAN",
    ...entries.flatMap((entry) => taskLines(entry, asOf)),
    ...(last === null
      ? []
      : eventLines({ ...last, uid: "left-out", asOf, first: asOf, last: asOf, place: "" })),
    "END:VCALENDAR",
  ];
  return lines.map((line) => `${fold(line)}\r\n`).join("");
}

function taskLines({ task, ...words }: CalendarEntry, asOf: CivilDay): string[] {
  const first = task.from < asOf ? asOf : task.from;
  const last = Math.max(task.by, first) as CivilDay;
  return eventLines({ ...words, uid: uid(task), asOf, first, last, place: task.place });
}

interface CalendarEvent extends CalendarWords {
  readonly uid: string;
  readonly asOf: CivilDay;
  readonly first: CivilDay;
  readonly last: CivilDay;
  /** Empty where none is known. */
  readonly place: string;
}

function eventLines({
  uid,
  asOf,
  first,
  last,
  place,
  summary,
  description,
}: CalendarEvent): string[] {
  return [
    "BEGIN:VEVENT",
    `UID:${uid}@nursery-batches`,
    `DTSTAMP:${compactDay(asOf)}T000000Z`,
    `DTSTART;VALUE=DATE:${compactDay(first)}`,
    `DTEND;VALUE=DATE:${compactDay(daysLater(last, 1))}`,
    `SUMMARY:${text(summary)}`,
    ...(place === "" ? [] : [`LOCATION:${text(place)}`]),
    `DESCRIPTION:${text(description)}`,
    "TRANSP:TRANSPARENT",
    "END:VEVENT",
  ];
}

/** The same task has the same name in every file, so that a calendar replaces it. */
function uid({ batch, step }: Task): string {
  const part = (value: string) => encodeURIComponent(wellFormed(value.slice(0, 80)));
  return `${part(batch)}-${part(step.key)}`;
}

function compactDay(day: CivilDay): string {
  const { year, month, day: dayOfMonth } = yearMonthDay(day);
  const two = (value: number) => String(value).padStart(2, "0");
  return `${String(year).padStart(4, "0")}${two(month)}${two(dayOfMonth)}`;
}

const LONGEST_TEXT = 2000;
// Control characters have no place in a calendar's text; line ends are written as \\n.
const CONTROLS = /\p{Cc}/gu;

function text(value: string): string {
  const short = value.length > LONGEST_TEXT ? `${value.slice(0, LONGEST_TEXT)}…` : value;
  return wellFormed(short)
    .split("\n")
    .map((line) =>
      line.replace(CONTROLS, " ").replace(/\\/g, "\\\\").replace(/;/g, "\\;").replace(/,/g, "\\,"),
    )
    .join("\\n");
}

/** Half a pair of surrogates, left by a cut, would be no text. */
function wellFormed(value: string): string {
  return value.replace(
    /[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g,
    "\ufffd",
  );
}

const LONGEST_LINE = 75;

/** Folds a line so that no part is longer than 75 octets, never inside a character. */
function fold(line: string): string {
  let folded = "";
  let octets = 0;
  for (const character of line) {
    const size = octetsOf(character);
    if (octets + size > LONGEST_LINE) {
      folded += "\r\n ";
      octets = 1;
    }
    folded += character;
    octets += size;
  }
  return folded;
}

function octetsOf(character: string): number {
  const code = character.codePointAt(0) as number;
  if (code < 0x80) return 1;
  if (code < 0x800) return 2;
  return code < 0x10000 ? 3 : 4;
}
