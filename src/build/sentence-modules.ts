import MessageFormat, { type CustomFormatter } from "@messageformat/core";
import compileModule from "@messageformat/core/lib/compile-module";
import { parse, type Token } from "@messageformat/parser";
import { type Expression, type ObjectExpression, type Property, parse as parseScript } from "acorn";
import { english } from "../sentences/english";
import * as runtime from "../sentences/runtime";

/** Messages by group and key. */
export type Messages = Readonly<Record<string, Readonly<Record<string, string>>>>;

/** What a message is given, as types of TypeScript, by the facts' names. */
export type FactTypes = Readonly<Record<string, string>>;

const MADE = "// Made by npm run sentences from src/sentences/english.ts; a test holds it equal.\n";
const FOLDER = "src/sentences/made";
const LANGUAGE = "en";
const HEADERS = "headers";

/** How a fact may be written, as in {rate, share}: the type of such a fact, and what writes it. */
const FORMATTERS: Readonly<Record<string, { readonly type: string; readonly write: unknown }>> = {
  count: { type: "number", write: runtime.count },
  share: { type: "number", write: runtime.share },
  list: { type: "readonly string[]", write: runtime.list },
};

/**
 * A module of plain functions for each group of messages, by its path; the committed ones are exactly
 * these. A function stands alone, so that a bundle takes along only what it calls.
 *
 * @throws Error that names group and key of a message that does not compile
 */
export function sentenceModules(messages: Messages = english): ReadonlyMap<string, string> {
  return new Map(
    Object.entries(messages).map(([group, texts]) => [modulePath(group), moduleOf(group, texts)]),
  );
}

function modulePath(group: string): string {
  return `${FOLDER}/${fileName(group)}.ts`;
}

/** @example fileName("takeTabs") // "take-tabs" */
function fileName(group: string): string {
  return group.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
}

function moduleOf(group: string, texts: Readonly<Record<string, string>>): string {
  const formatters = new MessageFormat(LANGUAGE, {
    biDiSupport: false,
    customFormatters: Object.fromEntries(
      Object.entries(FORMATTERS).map(([id, { write }]) => [
        id,
        { id, module: "../runtime", formatter: write as CustomFormatter },
      ]),
    ),
  });
  const functions = Object.entries(texts).map(([key, text]) => {
    if (key in runtime) throw new Error(`${group}.${key}: ${key} is a name of runtime.ts`);
    const facts = factTypes(text, `${group}.${key}`);
    const body = named(`${group}.${key}`, () =>
      compiled(compileModule(formatters, { [key]: text })),
    );
    return `export const ${key} = (${parameter(facts)}): string =>\n  ${body};\n`;
  });
  if (group.endsWith("Columns")) functions.push(headersOf(texts));
  const all = functions.join("\n");
  const used = Object.keys(runtime).filter((name) => new RegExp(`\\b${name}\\(`).test(all));
  const imports =
    used.length === 0 ? "" : `import { ${used.sort().join(", ")} } from "../runtime";\n\n`;
  return `${MADE}\n${imports}${all}`;
}

/** All headers of a table at once: a bundle that lays tables out needs no function for each. */
function headersOf(texts: Readonly<Record<string, string>>): string {
  const lines = Object.entries(texts).map(([key, text]) => `  ${key}: ${JSON.stringify(text)},\n`);
  return `export const ${HEADERS} = () => ({\n${lines.join("")}});\n`;
}

/** The expression that the compiler makes of a message. */
function compiled(script: string): string {
  const program = parseScript(script, { ecmaVersion: 2020, sourceType: "module" });
  const made = program.body.find((one) => one.type === "ExportDefaultDeclaration");
  if (made === undefined) throw new Error("the compiler made nothing");
  const [property] = (made.declaration as ObjectExpression).properties as Property[];
  const { value } = property as Property;
  const { start, end } =
    value.type === "ArrowFunctionExpression" ? (value.body as Expression) : value;
  return lean(script.slice(start, end));
}

/**
 * The same without the language in each call, since a module is of one: the built file is smaller by it.
 * A text in quotation marks can't hold what is looked for, as its own are written \\".
 */
function lean(expression: string): string {
  const language = JSON.stringify(LANGUAGE);
  return expression
    .replaceAll(new RegExp(`\\bnumber\\(${language}, ([\\w.]+), 0\\)`, "g"), "count($1)")
    .replaceAll(new RegExp(`\\b(plural\\([\\w.]+), 0, ${LANGUAGE}, \\{`, "g"), "$1, {")
    .replaceAll(`, ${language})`, ")");
}

function parameter(facts: FactTypes): string {
  const members = Object.entries(facts).map(([name, type]) => `readonly ${name}: ${type}`);
  return members.length === 0 ? "" : `d: { ${members.join("; ")} }`;
}

/** What a message is given. @throws Error that names the message where it can't be read */
export function factTypes(text: string, name: string): FactTypes {
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
      if (token.type === "argument") add(token.arg, "string | number");
      else if (token.type === "function") {
        const type = FORMATTERS[token.key]?.type;
        if (type === undefined) throw new Error(`there is no way to write as ${token.key}`);
        add(token.arg, type);
      } else if (token.type === "plural" || token.type === "selectordinal") {
        add(token.arg, "number");
        for (const one of token.cases) walk(one.tokens);
      } else if (token.type === "select") {
        const keys = token.cases.map(({ key }) => key).filter((key) => key !== "other");
        add(token.arg, keys.map((key) => JSON.stringify(key)).join(" | "));
        for (const one of token.cases) walk(one.tokens);
      }
    }
  };
  named(name, () => walk(parse(text, { cardinal: ["one", "other"], strict: false })));
  return facts;
}

function named<Value>(name: string, work: () => Value): Value {
  try {
    return work();
  } catch (error) {
    throw new Error(`${name}: ${error instanceof Error ? error.message : String(error)}`);
  }
}

/**
 * How a language's messages differ from English's but in their words: one that lacks, one too many,
 * one with other facts. Each names the file and the key.
 */
export function languageSlips(
  file: string,
  own: Messages,
  all: Messages = english,
): readonly string[] {
  const slips: string[] = [];
  for (const group of new Set([...Object.keys(all), ...Object.keys(own)])) {
    for (const key of new Set([
      ...Object.keys(all[group] ?? {}),
      ...Object.keys(own[group] ?? {}),
    ])) {
      const [theirs, ours] = [all[group]?.[key], own[group]?.[key]];
      const name = `${file}: ${group}.${key}`;
      if (ours === undefined) slips.push(`${name} is missing`);
      else if (theirs === undefined) slips.push(`${name} is not in english.ts`);
      else {
        const [wanted, found] = [factTypes(theirs, name), factTypes(ours, name)].map((facts) =>
          Object.entries(facts)
            .map((fact) => fact.join(": "))
            .sort()
            .join(", "),
        );
        if (wanted !== found) slips.push(`${name} has the facts {${found}}, not {${wanted}}`);
      }
    }
  }
  return slips;
}
