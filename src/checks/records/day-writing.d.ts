import { type CivilDay } from "../../core";
/** Where the names of months and weekdays are taken from: the Unicode CLDR, as Intl carries it. */
export declare const DAY_LOCALES: readonly ["en-GB", "en-US", "fr", "es", "pt-PT", "pt-BR", "id"];
type DayLocale = (typeof DAY_LOCALES)[number];
/** The day, month and year of a day as numbers, with a mark between. */
export declare function numbersOf(
  day: CivilDay,
  order: "day-first" | "month-first",
  {
    mark,
    shortYear,
    padded,
  }: {
    mark: string;
    shortYear: boolean;
    padded: boolean;
  },
): string;
declare const NAMED: {
  "3 Sep 2026": (day: DayNames) => string;
  "3-Sep-26": (day: DayNames) => string;
  "03-Sep-2026": (day: DayNames) => string;
  "3/Sep/26": (day: DayNames) => string;
  "3 Sep. 2026": (day: DayNames) => string;
  "3 September 2026": (day: DayNames) => string;
  "Thursday 3 September 2026": (day: DayNames) => string;
  "Sep 3, 2026": (day: DayNames) => string;
  "September 3, 2026": (day: DayNames) => string;
  "3 de setembro de 2026": (day: DayNames) => string;
};
type NamedForm = keyof typeof NAMED;
export declare const NAMED_FORMS: NamedForm[];
interface DayNames {
  readonly date: string;
  readonly short: string;
  readonly long: string;
  readonly weekday: string;
  readonly year: string;
}
/** A day with its month's name. @example namedDay(day, "3-Sep-26", "fr") // "3-sept.-26" */
export declare function namedDay(day: CivilDay, form: NamedForm, locale: DayLocale): string;
/** A day without its year. @example undatedDay(day, "fr") // "3 sept." */
export declare function undatedDay(day: CivilDay, locale: DayLocale): string;
