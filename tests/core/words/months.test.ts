import { describe, expect, it } from "vitest";
import { allLanguages } from "../../../src/core/words/all-languages";
import type { LanguageWords } from "../../../src/core/words/language-words";
import { normalText } from "../../../src/core/words/normal-text";

/** Countries that write the names otherwise, beside the locales that each language's file names. */
const COUNTRIES: Readonly<Record<string, readonly string[]>> = {
  Spanish: ["es-MX"],
  Portuguese: ["pt-PT"],
};

const localesOf = ({ language, locales }: LanguageWords) => [
  ...locales,
  ...(COUNTRIES[language] ?? []),
];

// Source: the month names of the Unicode CLDR, as this runtime's Intl carries them. A name beside a
// day may differ from the name alone, so long names are asked for both ways; short ones alone, as
// CLDR has digits in place of the short names beside a day in Portugal.
function monthName(locale: string, form: "long" | "short", month: number, beside: boolean): string {
  const format = new Intl.DateTimeFormat(locale, {
    month: form,
    ...(beside ? { day: "numeric" } : {}),
    timeZone: "UTC",
  });
  const parts = format.formatToParts(new Date(Date.UTC(2026, month - 1, 15)));
  return parts.find((part) => part.type === "month")?.value ?? "";
}

describe("months of the languages", () => {
  it("has CLDR locales to check every language by", () => {
    for (const { locales } of allLanguages) expect(locales.length).toBeGreaterThan(0);
    const used = allLanguages.flatMap(localesOf);
    expect(Intl.DateTimeFormat.supportedLocalesOf(used)).toEqual(used);
  });

  for (const words of allLanguages) {
    const cases = localesOf(words).flatMap((locale) => [
      { locale, form: "long" as const, beside: false },
      { locale, form: "long" as const, beside: true },
      { locale, form: "short" as const, beside: false },
    ]);
    it.each(cases)(
      `finds each month's $form name of $locale in ${words.language} (beside a day: $beside)`,
      ({ locale, form, beside }) => {
        for (let month = 1; month <= 12; month += 1) {
          const name = normalText(monthName(locale, form, month, beside));
          expect(name).toMatch(/^[a-z]+$/);
          expect(words.months[month - 1]).toContain(name);
        }
      },
    );
  }

  it("has twelve months in each language, each with a name", () => {
    for (const words of allLanguages) {
      expect(words.months).toHaveLength(12);
      for (const names of words.months) expect(names.length).toBeGreaterThan(0);
    }
  });

  it("has no word that means two months, in one language or across them", () => {
    const monthOf = new Map<string, number>();
    for (const words of allLanguages) {
      words.months.forEach((names, index) => {
        expect(new Set(names).size).toBe(names.length);
        for (const name of names) expect([name, monthOf.get(name) ?? index]).toEqual([name, index]);
        for (const name of names) monthOf.set(name, index);
      });
    }
  });

  it("has no month's word that is also a weekday, a filler, a week or a part of a month", () => {
    const months = new Set(allLanguages.flatMap((words) => words.months.flat()));
    const clashes = allLanguages.flatMap((words) =>
      (["weekdays", "dateFillers", "week", "early", "middle", "late"] as const).flatMap((list) =>
        words[list]
          .filter((word) => months.has(word))
          .map((word) => `${words.language}, ${list}: "${word}" is a month`),
      ),
    );
    expect(clashes).toEqual([]);
  });
});
