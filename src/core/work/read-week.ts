import { weekSigns } from "./week-words";

/** What somebody has on a weekday: a share of a day, 0 to 1, or hundredths of an hour. */
export type WeekPart = { readonly share: number } | { readonly hundredths: number };

/** Seven, Monday first. */
export type Week = readonly WeekPart[];

const DAYS = [1, 2, 3, 4, 5, 6, 7];
/** A cell may hold 50,000 letters; nobody's week is longer said. */
const LONGEST = 300;
/** What is said before days, the days, and what is said behind them; see week-words.ts. */
const PIECE = /^(x?)([hon]?)((?:\d-\d|\d(?:\+\d)*)?)([hon]?)$/;

/**
 * Reads on which days of the week somebody works, in the words of any language: "Mon–Fri", "Tue, Thu",
 * "not Sunday", "Mon–Fri, Sat half", "Mon–Thu; Fri 6 h".
 *
 * @param isOff whether it says on which days somebody does not work
 * @returns null for what can't be read, or could be read in two ways: "Tue, Thu mornings"
 */
export function readWeek(written: string, isOff = false): Week | null {
  const signs = written.length > LONGEST ? null : weekSigns(written, isOff);
  if (signs === null) return null;
  const hours = [...signs.hours];
  const told: {
    readonly days: readonly number[];
    readonly part: WeekPart;
    readonly isOff: boolean;
  }[] = [];
  // "Mon–Fri and Sat morning": a span is one thing, a day behind it another. "Sunday no" is Sunday off.
  const text = signs.text
    .replace(/(\d-\d)\+/g, "$1,")
    .replace(/\+(?=\d-)/g, ",")
    .replace(/(?<=\d)x(?=[,;]|$)/g, "o")
    .replace(/(?<=\w)x/g, ",x");
  for (const sentence of text.split(";").filter(Boolean)) {
    let isExcept = false;
    let isPlain = false;
    for (const [at, piece] of sentence.split(",").filter(Boolean).entries()) {
      const [match, not, before, days = "", behind] = PIECE.exec(piece) ?? [];
      const said = before || behind;
      if (match === undefined || (before && behind)) return null;
      if (days === "" && (not || !said || said === "o" || text !== piece)) return null;
      // What is said behind single days may be meant of the last or of all.
      if (at > 0 && behind && isPlain) return null;
      isPlain = (at === 0 || isPlain) && !days.includes("-") && !said;
      isExcept ||= not === "x";
      const part =
        said === "n" ? { hundredths: hours.shift() as number } : { share: said === "h" ? 0.5 : 1 };
      const isOff = isExcept || said === "o";
      if (isOff && said === "n") return null;
      told.push({ days: days === "" ? DAYS : daysIn(days), part, isOff });
    }
  }
  if (told.length === 0) return null;
  const week: WeekPart[] = DAYS.map(() => ({ share: told.every(({ isOff }) => isOff) ? 1 : 0 }));
  for (const { days, part, isOff } of [...told].sort((a, b) => Number(a.isOff) - Number(b.isOff))) {
    for (const day of days) {
      week[day - 1] = isOff && "share" in part ? { share: 1 - part.share } : part;
    }
  }
  return week;
}

/** "1+3", "6-1". */
function daysIn(text: string): readonly number[] {
  const [first, last] = text.split("-").map(Number);
  if (first === undefined || last === undefined) return text.split("+").map(Number);
  return DAYS.slice(0, ((last - first + 7) % 7) + 1).map((_, at) => ((first + at - 1) % 7) + 1);
}

/** The same where the text says on which days somebody does not work. */
export function weekOff(text: string): Week | null {
  const week = readWeek(text, true);
  if (week?.some((part) => "hundredths" in part) !== false) return null;
  return week.map((part) => ({ share: 1 - ("share" in part ? part.share : 0) }));
}
