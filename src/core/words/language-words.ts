import { CALENDAR_NAMES } from "./calendar-names.table";
import { type LanguageText, MONTH_NAMES, WEEKDAY_NAMES } from "./language-text";

export type { BatchFact, EventFact } from "./language-text";

/** The same with a list of words in place of each text. */
type Lists<Text> = Text extends string
  ? readonly string[]
  : { readonly [Key in keyof Text]: Lists<Text[Key]> };

/** The words for one step of a method. */
export interface StepWords {
  /** Names of the step itself; alone in a header they leave open whether days or plants are meant. */
  readonly name: readonly string[];
  /** Headers that mean the day of the step. */
  readonly day: readonly string[];
  /** Headers that mean the plants counted at the step; none where none are. */
  readonly count: readonly string[];
}

type CalendarPart = "months" | "weekdays" | "language" | "locales" | "steps";

/** One language's words, taken apart; see language-text.ts. */
export interface LanguageWords extends Lists<Omit<LanguageText, CalendarPart>> {
  readonly language: string;
  readonly locales: readonly string[];
  /** Twelve lists, January first. */
  readonly months: readonly (readonly string[])[];
  /** Seven lists, Monday first: what names a weekday where it stands alone. */
  readonly weekdayNames: readonly (readonly string[])[];
  /** Every word of a weekday's name, in full and cut short, that no month is called by. */
  readonly weekdays: readonly string[];
  /** By step key; see step-key.ts. */
  readonly steps: Readonly<Record<string, StepWords>>;
}

/** Takes the texts of a language's file apart and puts the names of its months and weekdays beside. */
export function languageWords(text: LanguageText): LanguageWords {
  const { language, locales, months, weekdays, steps, ...others } = text;
  const names = CALENDAR_NAMES[language];
  const of = (named: string | undefined, at: number) => wordsIn(named?.split(";")[at] ?? "");
  const weekdayNames = WEEKDAY_NAMES.map((day, at) => [
    ...of(names?.weekdays, at),
    ...wordsIn(weekdays[day] ?? ""),
  ]);
  return {
    ...listsIn(others),
    language,
    locales: wordsIn(locales),
    months: MONTH_NAMES.map((month, at) => [
      ...of(names?.months, at),
      ...wordsIn(months[month] ?? ""),
    ]),
    weekdayNames,
    weekdays: [
      ...new Set([
        ...weekdayNames.flat().flatMap((name) => name.split(" ")),
        ...wordsIn(names?.shortWeekdays ?? ""),
      ]),
    ],
    steps: Object.fromEntries(
      Object.entries(steps).map(([key, step]) => [key, { count: [], ...listsIn(step) }]),
    ),
  };
}

function wordsIn(text: string): string[] {
  if (text === "") return [];
  const words = text.split(",");
  // The built file's lists have no spaces to drop.
  const isSpaced = text.includes(", ") || text.includes(",\n") || text !== text.trim();
  return isSpaced ? words.map((word) => word.trim()) : words;
}

function listsIn<Text extends object>(text: Text): Lists<Text> {
  const lists = Object.entries(text).map(([key, part]) => [
    key,
    typeof part === "string" ? wordsIn(part) : listsIn(part as object),
  ]);
  return Object.fromEntries(lists) as Lists<Text>;
}
