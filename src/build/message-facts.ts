import { parse, type Token } from "@messageformat/parser";
import * as runtime from "../sentences/runtime";

/** What a message is given, as types of TypeScript, by the facts' names. */
export type FactTypes = Readonly<Record<string, string>>;

/** How a fact may be written, as in {rate, share}: the type of such a fact, and what writes it. */
export const FORMATTERS: Readonly<
  Record<string, { readonly type: string; readonly write: unknown }>
> = {
  count: { type: "number", write: runtime.count },
  share: { type: "number", write: runtime.share },
  list: { type: "readonly string[]", write: runtime.list },
};

/** A language's forms of plurals, by the names of CLDR. */
export interface PluralForms {
  /** All that its messages may name. */
  readonly allowed: readonly string[];
  /** Those that whole numbers of a nursery need; each message has to have them. */
  readonly needed: readonly string[];
}

/**
 * What a message is given.
 *
 * @throws Error that says why it can't be read: its braces, a way of writing that there is not, a fact
 *   of two types, a plural's form that the language has not or that lacks
 */
export function factTypes(text: string, forms: PluralForms): FactTypes {
  const facts: Record<string, string> = {};
  const add = (fact: string, type: string) => {
    const before = facts[fact];
    // A text that is looked at twice: written, and chosen by.
    if (before !== undefined && before !== type)
      throw new Error(`${fact} is ${before} and ${type}`);
    facts[fact] = type;
  };
  const walk = (tokens: readonly Token[]) => {
    for (const token of tokens) {
      // The parser takes some braces that lack their other for text; no message says a brace.
      if (token.type === "content" && /[{}]/.test(token.value)) {
        throw new Error(`a brace is alone in "${token.value}"`);
      }
      if (token.type === "argument") add(token.arg, "string | number");
      else if (token.type === "function") {
        const type = FORMATTERS[token.key]?.type;
        if (type === undefined) throw new Error(`there is no way to write as ${token.key}`);
        add(token.arg, type);
      } else if (token.type === "plural" || token.type === "selectordinal") {
        add(token.arg, "number");
        const keys = token.cases.map(({ key }) => key);
        const lacking = token.type === "plural" ? formsLacking(keys, forms) : [];
        if (lacking.length > 0)
          throw new Error(`${token.arg} lacks the form ${lacking.join(", ")}`);
        for (const one of token.cases) walk(one.tokens);
      } else if (token.type === "select") {
        const keys = token.cases.map(({ key }) => key).filter((key) => key !== "other");
        add(
          token.arg,
          keys
            .sort()
            .map((key) => JSON.stringify(key))
            .join(" | "),
        );
        for (const one of token.cases) walk(one.tokens);
      }
    }
  };
  walk(parse(text, { cardinal: [...forms.allowed] as never, strict: false }));
  return facts;
}

/** A plural that asks only whether there is none has no further form: {moved, plural, =0 {} other {…}}. */
function formsLacking(keys: readonly string[], { needed }: PluralForms): readonly string[] {
  const named = keys.filter((key) => !key.startsWith("="));
  if (named.length === 1 && named.length < keys.length) return [];
  return needed.filter((form) => !named.includes(form));
}
