import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { fileOf, languageSlips, sentenceLanguages } from "../../src/build/sentence-languages";
import { sentenceModules } from "../../src/build/sentence-modules";
import { type FunctionName, runs } from "../../src/functions/runs.table";
import { BUILT_LANGUAGES } from "../../src/sentences/built-languages";
import { english } from "../../src/sentences/english";
import * as runtime from "../../src/sentences/runtime";

const filesBelow = (folder: string) =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .map((name) => join(folder, name));

describe("the modules that are made from the files of sentences", () => {
  // The others' slips are named below, and hide nothing here.
  const modules = sentenceModules(
    sentenceLanguages().filter(({ name }) => (BUILT_LANGUAGES as readonly string[]).includes(name)),
  );

  it.each([...modules])("%s is as npm run sentences writes it: run that", (path, text) => {
    expect(readFileSync(path, "utf8")).toBe(text);
  });

  it("are no more than that", () => {
    expect(filesBelow("src/sentences/made").sort()).toEqual([...modules.keys()].sort());
  });
});

describe.each(sentenceLanguages().map((language) => [fileOf(language.name), language] as const))(
  "%s",
  (_, language) => {
    it("has a message for each of English's, with the same facts and the language's own plurals", () => {
      const [english] = sentenceLanguages();
      expect(languageSlips(language, english ?? language)).toEqual([]);
    });
  },
);

describe("every message", () => {
  const sources = filesBelow("src")
    .filter((path) => !path.startsWith(join("src", "sentences")))
    .map((path) => readFileSync(path, "utf8"));
  const dashed = (group: string) => group.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
  /** What the files that import a group call of it: "name.key" or the key alone. */
  const usedOf = (group: string): string => {
    const from = `sentences/made/${dashed(group)}"`;
    return sources.filter((source) => source.includes(from)).join("\n");
  };
  /** A function hands the group of its help over whole; what it says goes by the names of its arguments. */
  const saysOfFunctions = new Map(
    (Object.keys(runs) as FunctionName[]).map((name) => [
      `${name.toLowerCase().replace(/_(.)/g, (_, letter: string) => letter.toUpperCase())}Help`,
      ["sentence", "answers", ...Object.keys(runs[name].parameters)],
    ]),
  );
  saysOfFunctions.set("parameterHelp", [...saysOfFunctions.values()].flat());
  const all = Object.entries(english).flatMap(([group, messages]) =>
    Object.keys(messages).map((key) => [group, key] as const),
  );

  it.each(all)("%s.%s is used", (group, key) => {
    const users = usedOf(group);
    // Headers of a table's columns are called by the keys of the columns, which core declares.
    const columns = group.endsWith("Columns") ? sources.join("\n") : "";
    const called =
      saysOfFunctions.get(group)?.includes(key) ||
      new RegExp(`\\.${key}\\b`).test(users) ||
      new RegExp(`[{,]\\s*${key}\\b[^"]*\\} from "[^"]*sentences/made/`).test(users) ||
      new RegExp(`\\b${key}: "(text|day|count|share|hours|number)"`).test(columns);
    expect(called, `src/sentences/english.ts: ${group}.${key} is used nowhere`).toBe(true);
  });

  it("stands in the order of letters, and so does its group, so that two people add in two lines", () => {
    const inOrder = (keys: readonly string[]) =>
      [...keys].sort((a, b) => (a.toLowerCase() < b.toLowerCase() ? -1 : 1));
    for (const [group, messages] of Object.entries(english)) {
      const keys = Object.keys(messages);
      expect(keys, `src/sentences/english.ts: ${group}`).toEqual(inOrder(keys));
    }
    const groups = Object.keys(english);
    expect(groups, "src/sentences/english.ts: the groups").toEqual(inOrder(groups));
  });
});

// Against the language data of the machine's JavaScript (Unicode CLDR).
describe("what messages call", () => {
  it("chooses the form of a number as CLDR does", () => {
    const rules = new Intl.PluralRules("en");
    for (let number = 0; number <= 1000; number += 1) {
      expect(runtime.pluralForm(number)).toBe(rules.select(number));
    }
  });

  it("writes whole numbers and lists as English does", () => {
    const numbers = new Intl.NumberFormat("en");
    for (const number of [0, 7, 999, 1000, 12345, 1234567]) {
      expect(runtime.count(number)).toBe(numbers.format(number));
    }
    // "en-GB" has no comma before the last.
    const lists = new Intl.ListFormat("en-GB");
    for (const items of [[], ["a"], ["a", "b"], ["a", "b", "c"]]) {
      expect(runtime.list(items)).toBe(lists.format(items));
    }
  });

  it("writes shares in whole percents", () => {
    expect(runtime.share(0.641)).toBe("64\u00a0%");
    expect(runtime.share(0)).toBe("0\u00a0%");
  });
});
