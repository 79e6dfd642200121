import MessageFormat from "@messageformat/core";
import { wordFiles } from "../core/words/language-files.table";
import { sentenceFiles } from "../sentences/language-files.table";
import { factTypes, type PluralForms } from "./message-facts";

/** Messages by group and key. */
export type Messages = Readonly<Record<string, Readonly<Record<string, string>>>>;

/** A language in which the program can speak. */
export interface SentenceLanguage {
  /** The name of its files: "english". */
  readonly name: string;
  /** Its locale by BCP 47, the first that its file of words names: "en-GB". */
  readonly locale: string;
  readonly messages: Messages;
}

/**
 * Every language that has a file of sentences, English first.
 *
 * @throws Error that names a file of sentences without a file of words
 */
export function sentenceLanguages(
  sentences: Readonly<Record<string, Messages>> = sentenceFiles,
  words: Readonly<Record<string, { readonly locales: string }>> = wordFiles,
): readonly SentenceLanguage[] {
  return Object.entries(sentences).map(([name, messages]) => {
    const locale = words[name]?.locales.split(",")[0]?.trim();
    if (locale === undefined) {
      throw new Error(
        `${fileOf(name)} has no src/core/words/${name}.ts beside it, whose locales give its plurals`,
      );
    }
    return { name, locale, messages };
  });
}

export const fileOf = (name: string): string => `src/sentences/${name}.ts`;

/** What CLDR says of a locale's plurals, and what the compiler calls it. */
export interface PluralRule extends PluralForms {
  /** The name that compiled messages have for the rule: "pt" for "pt-BR". */
  readonly id: string;
  /** The form for a number, by the names of CLDR. */
  readonly formOf: (value: number) => string;
}

/** No batch or count of plants that takes a form of its own lies further up, but for round millions. */
const NUMBERS_ASKED = 1000;

/**
 * The rule of plurals of a language. Source: Unicode CLDR, by the compiler's own tables.
 *
 * @throws Error that names the language's file where CLDR has no rule for its locale
 */
export function pluralRule({ name, locale }: Omit<SentenceLanguage, "messages">): PluralRule {
  const [rule] = new MessageFormat(locale).plurals;
  // The compiler falls back to English in silence.
  if (rule === undefined || rule.locale !== locale) {
    throw new Error(
      `src/core/words/${name}.ts, locales: there is no rule of plurals for "${locale}"`,
    );
  }
  const formOf: (value: number) => string = rule.getPlural;
  const needed = Array.from({ length: NUMBERS_ASKED + 1 }, (_, number) => formOf(number));
  return {
    id: rule.lc,
    allowed: rule.cardinals,
    needed: [...new Set([...needed, "other"])],
    formOf,
  };
}

/**
 * How a language's messages differ from English's but in their words: one that lacks, one too many, one
 * that can't be read, one with other facts, one without a form of its plural. Each names file, group and
 * key. None for a language as it should be.
 */
export function languageSlips(own: SentenceLanguage, first: SentenceLanguage): readonly string[] {
  const [rule, firstRule] = [pluralRule(own), pluralRule(first)];
  const slips: string[] = [];
  for (const group of keysOf(first.messages, own.messages)) {
    const [theirs = {}, ours = {}] = [first.messages[group], own.messages[group]];
    for (const key of keysOf(theirs, ours)) {
      const slip = slipOf(
        { text: ours[key], rule },
        { text: theirs[key], rule: firstRule, file: fileOf(first.name) },
      );
      if (slip !== null) slips.push(`${fileOf(own.name)}: ${group}.${key} ${slip}`);
    }
  }
  return slips;
}

interface Message {
  readonly text: string | undefined;
  readonly rule: PluralForms;
}

function slipOf(ours: Message, theirs: Message & { readonly file: string }): string | null {
  if (ours.text === undefined) return "is missing";
  if (theirs.text === undefined) return `is not in ${theirs.file}`;
  try {
    const [found, wanted] = [factsText(ours.text, ours.rule), factsText(theirs.text, theirs.rule)];
    return found === wanted ? null : `has the facts {${found}}, not {${wanted}}`;
  } catch (error) {
    return `can't be read: ${error instanceof Error ? error.message : String(error)}`;
  }
}

function factsText(text: string, rule: PluralForms): string {
  return Object.entries(factTypes(text, rule))
    .map((fact) => fact.join(": "))
    .sort()
    .join(", ");
}

function keysOf(one: object, other: object): readonly string[] {
  return [...new Set([...Object.keys(one), ...Object.keys(other)])];
}
