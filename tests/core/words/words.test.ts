import { describe, expect, it } from "vitest";
import { allLanguages } from "../../../src/core/words/all-languages";
import { english } from "../../../src/core/words/english";
import type { LanguageWords } from "../../../src/core/words/language-words";
import { normalText } from "../../../src/core/words/normal-text";

/** What a header's word can mean: a fact, or one of the three kinds of word of a step. */
interface Meaning {
  readonly word: string;
  readonly meaning: string;
}

function headerMeanings(words: LanguageWords): Meaning[] {
  const facts = Object.entries(words.facts).flatMap(([fact, list]) =>
    list.map((word) => ({ word, meaning: fact })),
  );
  const steps = Object.entries(words.steps).flatMap(([key, step]) =>
    (["name", "day", "count"] as const).flatMap((kind) =>
      step[kind].map((word) => ({ word, meaning: `${kind} of ${key}` })),
    ),
  );
  return [...facts, ...steps];
}

/** The plain lists of a language, by name. */
function plainLists(words: LanguageWords): [string, readonly string[]][] {
  const { language: _, months, facts: _facts, steps: _steps, ...lists } = words;
  return [...Object.entries(lists), ["months", months.flat()]];
}

/** Each word with all that it means, where that is more than one thing. */
function wordsOfTwoMeanings(meanings: readonly Meaning[]): string[] {
  const meaningsOf = new Map<string, Set<string>>();
  for (const { word, meaning } of meanings) {
    meaningsOf.set(word, (meaningsOf.get(word) ?? new Set()).add(meaning));
  }
  return [...meaningsOf]
    .filter(([, all]) => all.size > 1)
    .map(([word, all]) => `${word}: ${[...all].join(", ")}`);
}

describe("words of each language", () => {
  it.each(allLanguages)("are in normal form in $language", (words) => {
    const all = [
      ...headerMeanings(words).map(({ word }) => word),
      ...plainLists(words).flatMap(([, list]) => list),
    ];
    const punctuation = words.nothing.filter((word) => normalText(word) === "");
    const wrong = all.filter((word) => normalText(word) !== word && !punctuation.includes(word));
    expect(wrong).toEqual([]);
    expect(all.filter((word) => word === "")).toEqual([]);
  });

  it.each(allLanguages)("mean one fact or one kind of step word each in $language", (words) => {
    expect(wordsOfTwoMeanings(headerMeanings(words))).toEqual([]);
  });

  it.each(allLanguages)("stand once in each list of $language", (words) => {
    const lists: [string, readonly string[]][] = [
      ...plainLists(words),
      ["headers", headerMeanings(words).map(({ word }) => word)],
    ];
    for (const [name, list] of lists) {
      const twice = list.filter((word, index) => list.indexOf(word) !== index);
      expect([name, twice]).toEqual([name, []]);
    }
  });

  it.each(allLanguages)("cover every step and every fact in $language", (words) => {
    expect(Object.keys(words.steps).sort()).toEqual(Object.keys(english.steps).sort());
    for (const step of Object.values(words.steps)) expect(step.name.length).toBeGreaterThan(0);
    for (const list of Object.values(words.facts)) expect(list.length).toBeGreaterThan(0);
    for (const [name, list] of plainLists(words))
      expect([name, list.length > 0]).toEqual([name, true]);
  });

  it.each(allLanguages)(
    "give a count word in $language to just the steps that are counted",
    (words) => {
      for (const [key, step] of Object.entries(english.steps)) {
        if (step.count.length > 0)
          expect([key, words.steps[key]?.count.length]).not.toEqual([key, 0]);
        else expect([key, words.steps[key]?.count]).toEqual([key, []]);
      }
    },
  );
});

// Languages are mixed within a table, so a word may not change its meaning between them either.
describe("words of all languages together", () => {
  it("mean one fact or one kind of step word each", () => {
    expect(wordsOfTwoMeanings(allLanguages.flatMap(headerMeanings))).toEqual([]);
  });

  it("have no word that says both day and plants, or both yes and no", () => {
    const both = (one: keyof LanguageWords, other: keyof LanguageWords) => {
      const others = new Set(allLanguages.flatMap((words) => words[other] as readonly string[]));
      return allLanguages
        .flatMap((words) => words[one] as readonly string[])
        .filter((word) => others.has(word));
    };
    expect(both("dayWords", "countWords")).toEqual([]);
    expect(both("dayWords", "headerFillers")).toEqual([]);
    expect(both("countWords", "headerFillers")).toEqual([]);
    expect(both("yes", "no")).toEqual([]);
    expect(both("totals", "nothing")).toEqual([]);
  });

  it("have no word for two parts of a month", () => {
    const parts = ["early", "middle", "late", "week"] as const;
    const meanings = allLanguages.flatMap((words) =>
      parts.flatMap((part) => words[part].map((word) => ({ word, meaning: part }))),
    );
    expect(wordsOfTwoMeanings(meanings)).toEqual([]);
  });
});
