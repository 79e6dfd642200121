import type { Day, Locale, Month } from "date-fns";
import * as dateFnsLocales from "date-fns/locale";
import { languageTexts } from "../core/words/all-languages";
import type { CalendarNames } from "../core/words/calendar-names";
import type { LanguageText } from "../core/words/language-text";
import { normalText } from "../core/words/normal-text";

const LOCALES: readonly Locale[] = Object.values(dateFnsLocales);
const MONTHS: readonly Month[] = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11];
/** Sunday is 0; weeks begin with Monday. */
const WEEKDAYS: readonly Day[] = [1, 2, 3, 4, 5, 6, 0];

/**
 * The names of months and weekdays of every language, in full and cut short, in normal form.
 * A weekday's short name that is a month's, too ("mar"), is left to the month.
 *
 * A language that date-fns lacks (Swahili) has none here: its file of words writes them all.
 *
 * Source: the locales of date-fns.
 * @throws Error when a language's file names a locale that there is not
 */
export function calendarNames(): Readonly<Record<string, CalendarNames>> {
  const locales = new Map(languageTexts.map((text) => [text, localesOf(text)]));
  const months = (text: LanguageText) =>
    MONTHS.map((month) =>
      each(locales.get(text), ({ localize }) =>
        (["formatting", "standalone"] as const).flatMap((context) => [
          localize.month(month, { width: "wide", context }),
          localize.month(month, { width: "abbreviated", context }),
        ]),
      ),
    );
  const monthWords = new Set(languageTexts.flatMap((text) => months(text).flat()));
  return Object.fromEntries(
    languageTexts.map((text) => {
      const own = locales.get(text);
      const short = WEEKDAYS.flatMap((day) =>
        each(own, ({ localize }) => [localize.day(day, { width: "abbreviated" })]),
      );
      const weekdays = WEEKDAYS.map((day) =>
        each(own, ({ localize }) => [localize.day(day, { width: "wide" })]),
      );
      const inFull = new Set(weekdays.flat().flatMap((name) => name.split(" ")));
      const names: CalendarNames = {
        months: written(months(text)),
        weekdays: written(
          WEEKDAYS.map((day) =>
            each(own, ({ localize }) => [localize.day(day, { width: "wide" })]),
          ),
        ),
        shortWeekdays: short
          .filter((word) => !monthWords.has(word) && !inFull.has(word))
          .join(", "),
      };
      return [text.language, names];
    }),
  );
}

function localesOf({ language, locales }: LanguageText): readonly Locale[] {
  return locales.split(",").flatMap((text) => {
    const code = text.trim();
    const found = LOCALES.filter((locale) => locale.code === code);
    if (found.length === 0 && !isLocale(code)) {
      throw new Error(
        `src/core/words/${language.toLowerCase()}.ts, locales: there is no locale "${code}"; date-fns has ${LOCALES.map((one) => one.code).join(", ")}`,
      );
    }
    return found;
  });
}

/** Whether the machine's language data (Unicode CLDR) has it. */
function isLocale(code: string): boolean {
  try {
    return Intl.DateTimeFormat.supportedLocalesOf(code).length > 0;
  } catch {
    return false;
  }
}

function each(
  locales: readonly Locale[] | undefined,
  names: (locale: Locale) => readonly string[],
): readonly string[] {
  return [...new Set((locales ?? []).flatMap(names).map(normalText))];
}

function written(lists: readonly (readonly string[])[]): string {
  if (lists.every((names) => names.length === 0)) return "";
  return lists.map((names) => names.join(", ")).join("; ");
}
