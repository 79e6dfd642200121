/** How a locale writes numbers and days, as far as reading what is typed goes. */
export interface LocaleMarks {
  readonly decimal: "." | ",";
  /** What may part groups of three digits, as a class for a regular expression. */
  readonly group: string;
  /** The order of year, month and day: "dmy", "mdy" or "ymd". */
  readonly order: "dmy" | "mdy" | "ymd";
  /** True when the locale parts a day by dots, as in 14.03.2026. */
  readonly dots: boolean;
  /** The usual number format of a day. */
  readonly dayPattern: string;
  /** The number, 1 to 12, of every long and short month name, in small letters without dots. */
  readonly months: ReadonlyMap<string, number>;
}

const known = new Map<string, LocaleMarks>();

/**
 * The marks of a locale, from the language data of the JavaScript engine.
 * @param locale such as "en_GB"; one that the engine does not know counts as English (US)
 */
export function localeMarks(locale: string): LocaleMarks {
  const found = known.get(locale);
  if (found) return found;
  const marks = readMarks(tagOf(locale));
  known.set(locale, marks);
  return marks;
}

function tagOf(locale: string): string {
  try {
    return Intl.getCanonicalLocales(locale.replaceAll("_", "-"))[0] ?? "en-US";
  } catch {
    return "en-US";
  }
}

function readMarks(tag: string): LocaleMarks {
  const numberParts = new Intl.NumberFormat(tag, { useGrouping: true }).formatToParts(-1234567.5);
  const part = (type: string) => numberParts.find((one) => one.type === type)?.value;
  const decimal = part("decimal") === "," ? "," : ".";
  const group = part("group") ?? "";
  const day = new Intl.DateTimeFormat(tag, {
    timeZone: "UTC",
    year: "numeric",
    month: "2-digit",
    day: "2-digit",
  });
  const dayParts = day.formatToParts(Date.UTC(2026, 2, 14));
  const letters = dayParts
    .filter(({ type }) => type === "day" || type === "month" || type === "year")
    .map(({ type }) => type[0])
    .join("");
  const order = letters === "dmy" || letters === "ymd" ? letters : "mdy";
  const separator = dayParts.find(({ type }) => type === "literal")?.value.trim() || "/";
  const pattern = { dmy: ["dd", "MM", "yyyy"], mdy: ["M", "d", "yyyy"], ymd: ["yyyy", "MM", "dd"] };
  return {
    decimal,
    // Locales that group by a space use one of three; people type the plain one.
    group: /\s/.test(group)
      ? "[ \\u00a0\\u202f]"
      : group === "."
        ? "\\."
        : decimal === ","
          ? "\\."
          : ",",
    order,
    dots: separator === ".",
    dayPattern: pattern[order].join(separator === "." || separator === "-" ? separator : "/"),
    months: monthNames(tag),
  };
}

function monthNames(tag: string): Map<string, number> {
  const names = new Map<string, number>();
  for (const month of ["long", "short"] as const) {
    for (const extra of [{}, { day: "numeric" }] as const) {
      const format = new Intl.DateTimeFormat(tag, { timeZone: "UTC", month, ...extra });
      for (let index = 0; index < 12; index++) {
        const name = format
          .formatToParts(Date.UTC(2026, index, 14))
          .find(({ type }) => type === "month")?.value;
        if (name) names.set(name.toLowerCase().replaceAll(".", ""), index + 1);
      }
    }
  }
  // In English the engine shortens September to Sept in some countries and to Sep in others.
  if (tag.startsWith("en")) names.set("sep", 9).set("sept", 9);
  return names;
}
