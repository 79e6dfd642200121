import { lazily } from "../lazily";
import { everyLanguage, everyWord, type LanguageWords, normalText, withoutAccents } from "../words";

const MOST_WORDS = 4;
const MOST_HOURS = 24;

/** What is looked up first stands first: "a" is a span in one language and a small word in another. */
const SIGNS: readonly (readonly [sign: string, of: (words: LanguageWords) => readonly string[]])[] =
  [
    ["1-7", ({ workDays }) => workDays.everyDay],
    ["1-5", ({ workDays }) => workDays.workingWeek],
    ["6-7", ({ workDays }) => workDays.weekend],
    ["h", ({ workDays: { half, morning, afternoon } }) => [...half, ...morning, ...afternoon]],
    ["x", ({ workDays }) => workDays.except],
    ["o", ({ workDays }) => workDays.off],
    ["-", ({ upTo, workDays }) => [...upTo, ...workDays.upTo]],
    ["+", (words) => words.and],
    [".", ({ workDays }) => workDays.filler],
  ];

const signs = lazily(() => {
  const found = new Map(["-", ",", ";", "+"].map((sign) => [sign, sign]));
  found.set("/", "+").set("&", "+").set("\n", ";").set("7 days", "1-7");
  const add = (word: string, sign: string) => found.has(word) || found.set(word, sign);
  for (const [name, day] of dayNames()) add(name, day);
  for (const [sign, of] of SIGNS) for (const word of everyWord(of)) add(word, sign);
  return found;
});

const dayNames = lazily(() =>
  everyLanguage().flatMap(({ weekdayNames }) =>
    weekdayNames.flatMap((names, at) => names.map((name) => [name, String(at + 1)] as const)),
  ),
);

/** "Mo", "tues", "Sundays", and "2ª", as Portuguese counts them: the one weekday that it can be. */
function weekdayIn(word: string): string | undefined {
  const counted = /^([2-6])a$/.exec(word)?.[1];
  if (counted !== undefined) return String(Number(counted) - 1);
  const isOf = (name: string) =>
    (word.length > 1 && name.startsWith(word)) ||
    (word.startsWith(name) && word.length <= name.length + 2);
  const days = new Set(dayNames().flatMap(([name, day]) => (isOf(name) ? day : [])));
  return days.size === 1 ? [...days][0] : undefined;
}

/** In Spanish and English none of the days behind it, in Portuguese on the day. */
const NO = "no";

/** Words of one language that no other has, in its weekdays and in what is said beside them. */
const onlyIn = lazily(() => {
  const of = everyLanguage().map(
    ({ language, weekdayNames, workDays, and, upTo }) =>
      [language, new Set([...weekdayNames, ...Object.values(workDays), and, upTo].flat())] as const,
  );
  return (word: string) => {
    const [one, ...more] = of.filter(
      ([, words]) => words.has(word) || words.has(word.replace(/s$/, "")),
    );
    return more.length === 0 ? (one?.[0] ?? null) : null;
  };
});

/** What "no" is in a text; null where its words don't tell. */
function signOfNo(words: readonly string[], isOff: boolean): string | null {
  const languages = new Set(words.map((word) => (word === NO ? null : onlyIn()(word))));
  languages.delete(null);
  if (languages.size > 1) return null;
  if (languages.size > 0) return languages.has("Portuguese") ? "." : "x";
  // Who says so in a column of days off is off on them, in either language.
  if (isOff) return ".";
  // "Domingo no", "no domingos" is not said in Portuguese.
  const next = words[words.indexOf(NO) + 1];
  return next === undefined || next.endsWith("s") ? "x" : null;
}

/** A text on days of the week, in signs. */
export interface WeekSigns {
  /**
   * 1 to 7 a weekday, "-" between two a span, "+" "," ";" between such; "x" before what is not meant; "o"
   * off, "h" half a day, "n" so many hours.
   */
  readonly text: string;
  /** Hundredths of an hour of each "n". */
  readonly hours: readonly number[];
}

/**
 * @param isOff whether it says on which days somebody does not work
 * @returns null where a word means nothing here, or could mean two things
 */
export function weekSigns(written: string, isOff: boolean): WeekSigns | null {
  const words = withoutAccents(written.normalize("NFKC"))
    .toLowerCase()
    .replace(/[‐-―−~]/g, "-")
    .replace(/[-/&+,;\n]/g, " $& ")
    .split(/[^\S\n]+/)
    .flatMap((word) => (/^[-/&+,;\n]$/.test(word) ? word : normalText(word).split(" ")))
    .filter(Boolean);
  const hours: number[] = [];
  let text = "";
  for (let at = 0; at < words.length; at += 1) {
    let end = Math.min(words.length, at + MOST_WORDS);
    // "Après-midi", "s/d", "L-V": signs may stand within a phrase, at neither end.
    const phrase = () =>
      words
        .slice(at, end)
        .join(" ")
        .replace(/(?<=\w) [-/](?= \w)/g, "");
    while (end > at + 1 && !signs().has(phrase())) end -= 1;
    let sign = phrase() === NO ? signOfNo(words, isOff) : signs().get(phrase());
    if (sign === null) return null;
    sign ??= weekdayIn(phrase());
    if (sign === undefined) {
      const [, digits = "", unit] =
        /^(\d+) ?(\p{L}+)$/u.exec(words.slice(at, at + 2).join(" ")) ??
        /^(\d+)(\p{L}+)$/u.exec(words[at] as string) ??
        [];
      const isHours = unit === "h" || everyWord((all) => all.units.hour).includes(unit ?? "");
      if (!isHours || Number(digits) > MOST_HOURS) return null;
      hours.push(Number(digits) * 100);
      end = words[at] === digits ? at + 2 : at + 1;
      sign = "n";
    }
    text += sign;
    at = end - 1;
  }
  // "Segunda-feira": a dash before a word that says nothing is no span.
  return { text: text.replace(/-?\./g, ""), hours };
}
