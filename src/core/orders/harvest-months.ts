import { cellText, type Grid, shortened } from "../cells";
import { type CivilDay, daysLater, firstDayOf, type Month, monthOf, monthOfWord } from "../dates";
import { InputError } from "../faults";
import { lazily } from "../lazily";
import type { Method, Timetable } from "../timetable";
import { normalText, wordPattern, wordSet } from "../words";
import { ICCO_HARVEST_MONTHS } from "./icco-harvest-months.table";

/** When seed is harvested at a place. */
export interface HarvestMonths {
  /** As they were written. */
  readonly written: string;
  /** 1 to 12. */
  readonly months: ReadonlySet<number>;
}

/** Words between the two ends of a span of months. */
const TO_WORDS = wordSet((words) => words.upTo);
const between = lazily(
  () => new RegExp(`[,;/&\\n]| (?:${wordPattern((words) => words.and)}) `, "i"),
);

/**
 * The months written in a text, such as "Oct-Mar, May-Aug" or "September".
 *
 * @returns null when some part of it is no month and no span of months
 */
export function readMonths(text: string): ReadonlySet<number> | null {
  const months = new Set<number>();
  for (const part of text.split(between())) {
    const words = normalText(part)
      .split(" ")
      .filter((word) => !TO_WORDS.has(word));
    const [first, last = first, ...more] = words.map(monthOfWord);
    if (first === undefined || first === null || last === undefined || last === null) return null;
    if (more.length > 0) return null;
    for (let month = first; ; month = (month % 12) + 1) {
      months.add(month);
      if (month === last) break;
    }
  }
  return months;
}

/**
 * Reads the harvest months that hold for a method: one cell with months, or with the name of a place
 * of the built-in example (cocoa); or a table whose rows hold months in some cells and in others the
 * crop or method, or a place.
 *
 * @returns null when the table speaks of other methods only
 * @throws InputError "no-harvest-months" | "several-harvests"
 */
export function readHarvestMonths(
  grid: Grid,
  method: Method,
  timetable: Timetable,
): HarvestMonths | null {
  const lines = harvestLines(grid);
  if (lines.length === 0) {
    const found = shortened(cellText(grid.at(0, 0)));
    throw new InputError({ code: "no-harvest-months", found });
  }
  const others = timetable.methods.filter((one) => one !== method);
  const named = lines.filter(({ names }) => names.some((name) => isOf(name, method)));
  const general = lines.filter(
    ({ names }) => !names.some((name) => others.some((other) => isOf(name, other))),
  );
  const chosen = named.length > 0 ? named : general;
  if (chosen.length === 0) return null;
  const places = new Set(chosen.map(({ names }) => names.join(" ")));
  if (places.size > 1) {
    throw new InputError({ code: "several-harvests", places: places.size });
  }
  return {
    written: [...new Set(chosen.map(({ written }) => written))].join(", "),
    months: new Set(chosen.flatMap(({ months }) => [...months])),
  };
}

interface Line extends HarvestMonths {
  readonly names: readonly string[];
}

function harvestLines(grid: Grid): readonly Line[] {
  const lines: Line[] = [];
  for (let row = 0; row < grid.rowCount; row += 1) {
    const names: string[] = [];
    const months = new Set<number>();
    const written: string[] = [];
    for (let column = 0; column < grid.columnCount; column += 1) {
      const text = cellText(grid.at(row, column));
      if (text === "") continue;
      const read = readMonths(text);
      if (read === null) names.push(normalText(text));
      else {
        written.push(text);
        for (const month of read) months.add(month);
      }
    }
    // A place alone, without months beside it, is looked up in the example.
    if (months.size === 0 && names.length === 1) {
      const known = ICCO_HARVEST_MONTHS.find(([place]) => normalText(place) === names[0]);
      if (known !== undefined) {
        written.push(known[1]);
        for (const month of readMonths(known[1]) ?? []) months.add(month);
      }
    }
    if (months.size > 0) lines.push({ names, months, written: written.join(", ") });
  }
  return lines;
}

/** Whether a name is a method's, or its crop's: the method's first word. */
function isOf(name: string, method: Method): boolean {
  const full = normalText(method.name);
  return name === full || name === full.split(" ")[0];
}

export function isHarvestDay({ months }: HarvestMonths, day: CivilDay): boolean {
  return months.has(monthNumber(monthOf(day)));
}

/** The last day before another that lies in a harvest month. */
export function lastHarvestDayBefore({ months }: HarvestMonths, day: CivilDay): CivilDay {
  let month = monthOf(day);
  // Some month of the year is a harvest month, so this ends within twelve.
  do month = (month - 1) as Month;
  while (!months.has(monthNumber(month)));
  return daysLater(firstDayOf((month + 1) as Month), -1);
}

function monthNumber(month: Month): number {
  return (month % 12) + 1;
}
