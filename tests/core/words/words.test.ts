import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  allLanguages,
  everyWord,
  languageTexts,
  tableWords,
} from "../../../src/core/words/all-languages";
import { CALENDAR_NAMES } from "../../../src/core/words/calendar-names.table";
import { english } from "../../../src/core/words/english";
import {
  type LanguageText,
  MONTH_NAMES,
  WEEKDAY_NAMES,
} from "../../../src/core/words/language-text";
import { type LanguageWords, languageWords } from "../../../src/core/words/language-words";
import { normalText } from "../../../src/core/words/normal-text";

/** A list of words where it stands: "french.ts, facts.batch". */
interface Place {
  readonly at: string;
  readonly key: string;
  readonly words: readonly string[];
}

const fileOf = ({ language }: LanguageText) => `${language.toLowerCase()}.ts`;

/** Every list of a language's file. */
function placesIn(text: LanguageText): Place[] {
  const { language: _, locales: _locales, ...lists } = text;
  const walk = (part: object, path: string): Place[] =>
    Object.entries(part).flatMap(([name, value]) => {
      const key = path === "" ? name : `${path}.${name}`;
      return typeof value === "string"
        ? { at: `${fileOf(text)}, ${key}`, key, words: value.split(",").map((word) => word.trim()) }
        : walk(value as object, key);
    });
  return walk(lists, "");
}

const places = new Map(languageTexts.map((text) => [text, placesIn(text)]));
const everyPlace = [...places.values()].flat();

/** Each word that means more than one thing, with the places that say so. */
function wordsOfTwoMeanings(
  among: readonly Place[],
  meaning: (place: Place) => string = ({ key }) => key,
): string[] {
  const placesOf = new Map<string, Place[]>();
  for (const place of among) {
    for (const word of place.words) placesOf.set(word, [...(placesOf.get(word) ?? []), place]);
  }
  return [...placesOf]
    .filter(([, all]) => new Set(all.map(meaning)).size > 1)
    .map(([word, all]) => `"${word}" means two things: ${all.map(({ at }) => at).join(" and ")}`);
}

const startingWith = (...starts: readonly string[]) =>
  everyPlace.filter(({ key }) => starts.some((start) => key.startsWith(start)));

describe.each(languageTexts.map((text) => [fileOf(text), text] as const))("%s", (file, text) => {
  const lists = places.get(text) ?? [];

  it("has no list, and no word of one, that is empty", () => {
    const empty = lists.filter(({ words }) => words.includes(""));
    expect(empty.map(({ at }) => `${at}: a word is missing`)).toEqual([]);
  });

  // Punctuation alone may stand for nothing noted: "-".
  it("is written in small letters without accents and signs", () => {
    const wrong = lists.flatMap(({ at, key, words }) =>
      words
        .filter((word) => normalText(word) !== word)
        .filter((word) => !(key === "nothing" && normalText(word) === ""))
        .map((word) =>
          word.includes(";")
            ? `${at}: words have a comma between, not ";": "${word}"`
            : `${at}: "${word}" must be written "${normalText(word)}"`,
        ),
    );
    expect(wrong).toEqual([]);
  });

  it("has each word once in its list", () => {
    const twice = lists.flatMap(({ at, words }) =>
      words
        .filter((word, index) => words.indexOf(word) !== index)
        .map((word) => `${at}: "${word}" stands twice`),
    );
    expect(twice).toEqual([]);
  });

  // Types say the same, but whoever runs the tests alone is told, too.
  it("has every key that english.ts has, and no other", () => {
    const optional = (key: string) => /^(months|weekdays)\./.test(key);
    const own = new Set(lists.map(({ key }) => key));
    const wanted = new Set(placesIn(english).map(({ key }) => key));
    const all = [...new Set([...own, ...wanted])].filter((key) => !optional(key));
    const wrong = all
      .filter((key) => own.has(key) !== wanted.has(key))
      .map((key) => `${file}: ${own.has(key) ? "nothing reads" : "lacks"} ${key}`);
    expect(wrong).toEqual([]);
  });

  // date-fns lacks some languages, Swahili among them.
  it("has a name for each month and weekday, from its locales or its own", () => {
    const words = languageWords(text);
    const lacking = [
      ...MONTH_NAMES.filter((_, at) => !words.months[at]?.length).map((key) => `months.${key}`),
      ...WEEKDAY_NAMES.filter((_, at) => !words.weekdayNames[at]?.length).map(
        (key) => `weekdays.${key}`,
      ),
    ].map((key) => `${file}, ${key}: no name, and date-fns has none. Write it, npm run words`);
    expect(lacking).toEqual([]);
  });

  it("writes no spelling of a month or weekday that its locales have", () => {
    const { months = "", weekdays = "" } = CALENDAR_NAMES[text.language] ?? {};
    const own = (key: string) => [
      months.split(";")[(MONTH_NAMES as readonly string[]).indexOf(key.replace("months.", ""))],
      weekdays.split(";")[
        (WEEKDAY_NAMES as readonly string[]).indexOf(key.replace("weekdays.", ""))
      ],
    ];
    const known = lists.flatMap(({ at, key, words }) => {
      const names = own(key).flatMap((list = "") => list.split(",").map((name) => name.trim()));
      return words
        .filter((word) => word !== "" && names.includes(word))
        .map((word) => `${at}: "${word}" is the locale's own already`);
    });
    expect(known).toEqual([]);
  });
});

describe("the list of languages", () => {
  /** What languages have in common stands in files with a hyphen in their names, the folder's face in index.ts. */
  const OTHERS = /-|^index\.ts$/;

  it("has every language's file in src/core/words, by its name", () => {
    const files = readdirSync("src/core/words").filter((file) => !OTHERS.test(file));
    const listed = languageTexts.map(fileOf);
    const wrong = [
      ...files.filter((file) => !listed.includes(file)).map((file) => `${file} is not listed`),
      ...listed.filter((file) => !files.includes(file)).map((file) => `there is no ${file}`),
      ...listed.filter((file, at) => listed.indexOf(file) !== at).map((file) => `${file} twice`),
    ];
    expect(
      wrong.map((what) => `${what}: its name and its language differ, or npm run words`),
    ).toEqual([]);
  });
});

// Languages are mixed within a table, so a word may not change its meaning between them either.
describe("words of all languages together", () => {
  it("mean one fact or one kind of step word each in the records", () => {
    expect(wordsOfTwoMeanings(startingWith("facts.", "steps."))).toEqual([]);
  });

  it.each(Object.keys(english.tables))("mean one column each in the table of %s", (table) => {
    expect(wordsOfTwoMeanings(startingWith(`tables.${table}.`))).toEqual([]);
  });

  // Other lists stand beside those of the tables, too.
  it("mean one column of a table each where a list is shared", () => {
    const shared = (columns: Readonly<Record<string, readonly string[]>>) =>
      wordsOfTwoMeanings(Object.entries(columns).map(([key, words]) => ({ at: key, key, words })));
    const name = everyWord((words) => words.name);
    const crew = tableWords("crew");
    expect(
      shared({ ...crew, person: [...name, ...everyWord(({ facts }) => facts.eventPerson)] }),
    ).toEqual([]);
    expect(shared({ ...tableWords("closedDays"), from: everyWord((words) => words.from) })).toEqual(
      [],
    );
    const place = [...name, ...everyWord(({ facts }) => facts.place)];
    expect(shared({ ...tableWords("places"), place })).toEqual([]);
  });

  it("mean one unit each", () => {
    expect(wordsOfTwoMeanings(startingWith("units.", "dozen"))).toEqual([]);
  });

  it("name one kind of tab each", () => {
    expect(wordsOfTwoMeanings(startingWith("tabs."))).toEqual([]);
  });

  it("mean one month or weekday each", () => {
    const named = (lists: (words: LanguageWords) => readonly (readonly string[])[]): Place[] =>
      allLanguages.flatMap((words) =>
        lists(words).map((list, index) => ({
          at: `${words.language} ${index + 1}`,
          key: String(index),
          words: list,
        })),
      );
    expect(wordsOfTwoMeanings(named(({ months }) => months))).toEqual([]);
    expect(wordsOfTwoMeanings(named(({ weekdayNames }) => weekdayNames))).toEqual([]);
  });

  it("never say both of two things that exclude each other", () => {
    const PAIRS = [
      ["dayWords", "countWords"],
      ["dayWords", "headerFillers"],
      ["countWords", "headerFillers"],
      ["yes", "no"],
      ["totals", "nothing"],
      ["and", "either"],
      ["moved", "splitOff"],
    ];
    const both = PAIRS.flatMap((pair) =>
      wordsOfTwoMeanings(everyPlace.filter(({ key }) => pair.includes(key))),
    );
    expect(both).toEqual([]);
  });

  it("have no word for two parts of a month", () => {
    const parts = ["early", "middle", "late", "week"];
    expect(wordsOfTwoMeanings(everyPlace.filter(({ key }) => parts.includes(key)))).toEqual([]);
  });

  it("write a day's form with single letters", () => {
    expect(everyWord((words) => words.dayLetters).filter((one) => !/^[a-z]$/.test(one))).toEqual(
      [],
    );
  });
});
