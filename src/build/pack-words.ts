import path from "node:path";
import type { Plugin } from "esbuild";
import { languageTexts } from "../core/words/all-languages";
import { english } from "../core/words/english";
import type { LanguageText } from "../core/words/language-text";
import { type PhraseCoded, phraseCoded, spelling } from "./phrase-codes";

const FILES = /[\\/]core[\\/]words[\\/][a-z]+\.ts$/;
/** Stands in no word: words are letters, numbers and spaces. */
const BETWEEN = "|";
const OWN = ["language", "locales", "months", "weekdays"];

/** What undoes phrase-codes.ts, and puts the texts of a language under the keys, in their order. */
const refill = (short: PhraseCoded) => `
${spelling(short)}
const keys = ${JSON.stringify(keysOf(english))};
export function refill(text) {
  const list = spellOut(text, phrases).split("${BETWEEN}");
  let at = 0;
  const fill = (part) => {
    const filled = {};
    for (const key in part) filled[key] = part[key] === 0 ? list[at++] : fill(part[key]);
    return filled;
  };
  return fill(keys);
}`;
/**
 * Packs the files of words: lists without the spaces and line breaks that are for the eye, the keys
 * once for all languages, and common phrases as one sign. The spreadsheet loads every byte of them
 * for each formula.
 */
export const packWords: Plugin = {
  name: "pack-words",
  setup(build) {
    const short = phraseCoded(
      languageTexts.map((text) => textsUnder(keysOf(english), text).join(BETWEEN)),
    );
    build.onLoad({ filter: FILES }, ({ path: file }) => {
      const at = languageTexts.findIndex((text) => nameOf(text) === path.basename(file, ".ts"));
      const text = languageTexts[at];
      if (text === undefined) return undefined;
      const words = JSON.stringify(short.texts[at]);
      const contents = `
        import { refill } from "refill";
        export const ${nameOf(text)} = { ...refill(${words}), ...${JSON.stringify(ownOf(text))} };`;
      return { contents };
    });
    build.onResolve({ filter: /^refill$/ }, ({ path: name }) => ({
      path: name,
      namespace: "words",
    }));
    build.onLoad({ filter: /^refill$/, namespace: "words" }, () => ({
      contents: refill(short),
      resolveDir: process.cwd(),
    }));
  },
};

function nameOf({ language }: LanguageText): string {
  return language.toLowerCase();
}

/** What has capitals, or other keys in each language: further spellings of some months and weekdays. */
function ownOf({ language, locales, months, weekdays }: LanguageText): object {
  return closedUp({ language, locales, months, weekdays });
}

/** The keys of a language's other lists, with 0 for each list. */
function keysOf(part: object): object {
  const keys = Object.entries(part).map(([key, value]) => [
    key,
    typeof value === "string" ? 0 : keysOf(value as object),
  ]);
  return Object.fromEntries(keys.filter(([key]) => !OWN.includes(key as string)));
}

/** @throws Error when the language lacks one of the keys */
function textsUnder(keys: object, part: unknown): string[] {
  return Object.entries(keys).flatMap(([key, value]) => {
    const own = (part as Readonly<Record<string, unknown>>)[key];
    if (typeof value === "object") return textsUnder(value as object, own ?? {});
    if (typeof own !== "string") throw new Error(`${key}: no words`);
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
