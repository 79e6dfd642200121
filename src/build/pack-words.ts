import path from "node:path";
import type { Plugin } from "esbuild";
import { languageTexts } from "../core/words/all-languages";
import { english } from "../core/words/english";
import type { LanguageText } from "../core/words/language-text";

const FILES = /[\\/]core[\\/]words[\\/][a-z]+\.ts$/;
/** Stands in no word: words are letters, numbers and spaces. */
const BETWEEN = "|";

/** What puts the texts of a language under the keys that english.ts has, in its order. */
const REFILL = `
export function refill(keys, texts) {
  const list = texts.split("${BETWEEN}");
  let at = 0;
  const fill = (part) => {
    const filled = {};
    for (const key in part) filled[key] = typeof part[key] === "string" ? list[at++] : fill(part[key]);
    return filled;
  };
  return fill(keys);
}`;
/**
 * Packs the files of words: lists without the spaces and line breaks that are for the eye, and the
 * keys once for all languages. The spreadsheet loads every byte of them for each formula.
 */
export const packWords: Plugin = {
  name: "pack-words",
  setup(build) {
    build.onLoad({ filter: FILES }, ({ path: file }) => {
      const text = languageTexts.find(
        ({ language }) => `${language.toLowerCase()}.ts` === path.basename(file),
      );
      return text === undefined ? undefined : { contents: moduleOf(text) };
    });
    build.onResolve({ filter: /^refill$/ }, ({ path: name }) => ({
      path: name,
      namespace: "words",
    }));
    build.onLoad({ filter: /^refill$/, namespace: "words" }, () => ({ contents: REFILL }));
  },
};

function moduleOf(text: LanguageText): string {
  const name = text.language.toLowerCase();
  if (text === english) return `export const ${name} = ${JSON.stringify(closedUp(text))};`;
  // Which months and weekdays have further spellings differs from language to language.
  const { months, weekdays } = text;
  const own = JSON.stringify(closedUp({ months, weekdays }));
  const texts = textsUnder({ ...english, months: {}, weekdays: {} }, text, name).join(BETWEEN);
  return `
    import { english } from "./english";
    import { refill } from "refill";
    const keys = { ...english, months: {}, weekdays: {} };
    export const ${name} = { ...refill(keys, ${JSON.stringify(texts)}), ...${own} };`;
}

/** @throws Error when the language lacks one of the keys */
function textsUnder(keys: object, part: unknown, at: string): string[] {
  return Object.entries(keys).flatMap(([key, value]) => {
    const own = (part as Readonly<Record<string, unknown>>)[key];
    if (typeof value === "object") return textsUnder(value as object, own ?? {}, `${at}.${key}`);
    if (typeof own !== "string") throw new Error(`${at}.${key}: no words`);
    return [closed(own)];
  });
}

function closedUp(part: object): object {
  return Object.fromEntries(
    Object.entries(part).map(([key, value]) => [
      key,
      typeof value === "string" ? closed(value) : closedUp(value as object),
    ]),
  );
}

/** "sow, sowing" as "sow,sowing". */
function closed(list: string): string {
  return list.trim().replace(/\s*,\s*/g, ",");
}
