import { describe, expect, it } from "vitest";
import { type ColumnTarget, targetKey } from "../../../src/core/records/column-target";
import { headerWords } from "../../../src/core/records/header-words";
import { allLanguages } from "../../../src/core/words/all-languages";

const words = headerWords(["Potting on", "Cut back", "Cuttings set", "Rooting"]);
const nameOf = (target: ColumnTarget) => targetKey(target).replace(/ (?:day|count)$/, "");

/** Each whole header that is known, with what it means, days and plants aside. */
const wholeHeaders = allLanguages.flatMap(({ language, facts, steps }) => [
  ...Object.entries(facts).flatMap(([fact, list]) =>
    fact.startsWith("event") ? [] : list.map((header) => [language, header, `fact ${fact}`]),
  ),
  ...Object.entries(steps).flatMap(([key, { name, day, count }]) =>
    [...name, ...day, ...count].map((header) => [language, header, `step ${key}`]),
  ),
]);

/** Known whole, since their parts mislead. */
const MISLEADING = [
  ...["plot no", "pris du lot", "bois de greffe"],
  ...["sale de lote", "sale del lote", "sale de partida", "sale de la partida"],
];

describe("parts of headers", () => {
  // The lists of whole headers were written before, by others, so each tries the parts.
  it("say nothing else for sure than a whole header that is known", () => {
    const wrong = wholeHeaders.flatMap(([language, header = "", meaning]) => {
      const parts = words.byParts(header);
      if (parts === null || !parts.sure || parts.target === null) return [];
      return nameOf(parts.target) === meaning || MISLEADING.includes(header)
        ? []
        : [`${language}: "${header}" is ${meaning}, by its parts ${nameOf(parts.target)}`];
    });
    expect(wrong).toEqual([]);
  });

  it("are each in one list of a language", () => {
    const twice = allLanguages.flatMap(({ language, parts }) => {
      const all = Object.values(parts).flat();
      return all.filter((word, at) => all.indexOf(word) !== at).map((word) => [language, word]);
    });
    expect(twice).toEqual([]);
  });
});
