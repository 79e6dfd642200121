import MessageFormat, { type CustomFormatter } from "@messageformat/core";
import compileModule from "@messageformat/core/lib/compile-module";
import { type Expression, type ObjectExpression, type Property, parse as parseScript } from "acorn";
import { BUILT_LANGUAGES } from "../sentences/built-languages";
import * as runtime from "../sentences/runtime";
import { type FactTypes, FORMATTERS, factTypes } from "./message-facts";
import {
  fileOf,
  languageSlips,
  type PluralRule,
  pluralRule,
  type SentenceLanguage,
  sentenceLanguages,
} from "./sentence-languages";

const MADE = "// Made by npm run sentences from the files of sentences; a test holds it equal.\n";
const FOLDER = "src/sentences/made";
const HEADERS = "headers";
/** The module of the rules of further languages. */
const RULES = "rules";
/** What a language writes in its own way. */
const OWN_WAYS = "plural|count|list";

/**
 * A module of plain functions for each group of messages, by its path; the committed ones are exactly
 * these. A function stands alone, so that a bundle takes along only what it calls. With more than one
 * language each function says what fits the one that is spoken, so no caller knows of them.
 *
 * @param languages the first is the one that the others follow
 * @param built names of those whose messages go into the modules; the others are looked through
 * @throws Error that names every message that can't be used: its file, group and key
 */
export function sentenceModules(
  languages: readonly SentenceLanguage[] = sentenceLanguages(),
  built: readonly string[] = BUILT_LANGUAGES,
): ReadonlyMap<string, string> {
  const [first] = languages;
  if (first === undefined) throw new Error("there is no language");
  const slips = languages.flatMap((language) => languageSlips(language, first));
  if (slips.length > 0) throw new Error(slips.join("\n"));
  const spoken = languages
    .filter(({ name }) => built.includes(name))
    .map((language) => ({ ...language, rule: pluralRule(language) }));
  const modules = new Map(
    Object.keys(first.messages).map((group) => [modulePath(group), moduleOf(group, spoken)]),
  );
  if (spoken.length > 1) modules.set(modulePath(RULES), rulesModule(spoken.slice(1)));
  return modules;
}

type Spoken = SentenceLanguage & { readonly rule: PluralRule };

function modulePath(group: string): string {
  return `${FOLDER}/${fileName(group)}.ts`;
}

/** @example fileName("takeTabs") // "take-tabs" */
function fileName(group: string): string {
  return group.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
}

function moduleOf(group: string, spoken: readonly Spoken[]): string {
  const [first] = spoken;
  if (first === undefined) throw new Error("no language is built in");
  const textsOf = (language: Spoken) => language.messages[group] ?? {};
  const functions = Object.entries(textsOf(first)).map(([key, text]) => {
    if (key in runtime) throw new Error(`${group}.${key}: ${key} is a name of runtime.ts`);
    const bodies = spoken.map((language) => [
      language.name,
      bodyOf(textsOf(language)[key] ?? "", {
        name: `${fileOf(language.name)}: ${group}.${key}`,
        language,
        isFirst: language === first,
      }),
    ]);
    const facts = factTypes(text, first.rule);
    // A line a message: made files are searched, not read, and two languages differ by whole lines.
    return `export const ${key} = (${parameter(facts)}): string => ${chosen(bodies)};\n`;
  });
  if (group.endsWith("Columns")) {
    const headers = spoken.map((language) => [language.name, headersOf(textsOf(language))]);
    functions.push(`export const ${HEADERS} = () => (${chosen(headers)});\n`);
  }
  const all = functions.join("\n");
  return `${MADE}\n${importsOf(all, spoken.slice(1))}${all}`;
}

/** What is said in the language that is spoken; the first where none of the others is. */
function chosen(bodies: readonly (readonly string[])[]): string {
  const [[, otherwise] = [], ...others] = bodies;
  return (
    others.map(([name, body]) => `isSpoken(${JSON.stringify(name)}) ? ${body} : `).join("") +
    otherwise
  );
}

function importsOf(script: string, further: readonly Spoken[]): string {
  const isCalled = (name: string) => new RegExp(`(?<![.\\w])${name}\\(`).test(script);
  const line = (names: readonly string[], from: string) =>
    names.length === 0 ? "" : `import { ${[...names].sort().join(", ")} } from "${from}";\n`;
  const rules = further
    .map(({ name }) => name)
    .filter((name) => new RegExp(`\\b${name}\\.(${OWN_WAYS})\\(`).test(script));
  const lines =
    line(Object.keys(runtime).filter(isCalled), "../runtime") +
    line(["isSpoken"].filter(isCalled), "../spoken-language") +
    line(rules, `./${RULES}`);
  return lines === "" ? "" : `${lines}\n`;
}

/** All headers of a table at once: a bundle that lays tables out needs no function for each. */
function headersOf(texts: Readonly<Record<string, string>>): string {
  const headers = Object.entries(texts).map(([key, text]) => `${key}: ${JSON.stringify(text)}`);
  return `{ ${headers.join(", ")} }`;
}

interface Compiled {
  readonly name: string;
  readonly language: Spoken;
  readonly isFirst: boolean;
}

/** The expression that the compiler makes of a message. @throws Error that names the message */
function bodyOf(text: string, { name, language, isFirst }: Compiled): string {
  const formatters = new MessageFormat(language.locale, {
    biDiSupport: false,
    customFormatters: Object.fromEntries(
      Object.entries(FORMATTERS).map(([id, { write }]) => [
        id,
        { id, module: "../runtime", formatter: write as CustomFormatter },
      ]),
    ),
  });
  try {
    const body = compiled(compileModule(formatters, { said: text }));
    return lean(body, { language, prefix: isFirst ? "" : `${language.name}.` });
  } catch (error) {
    throw new Error(`${name}: ${error instanceof Error ? error.message : String(error)}`);
  }
}

/** The expression in a script that the compiler made. */
function compiled(script: string): string {
  const program = parseScript(script, { ecmaVersion: 2020, sourceType: "module" });
  const made = program.body.find((one) => one.type === "ExportDefaultDeclaration");
  if (made === undefined) throw new Error("the compiler made nothing");
  const [property] = (made.declaration as ObjectExpression).properties as Property[];
  const { value } = property as Property;
  const { start, end } =
    value.type === "ArrowFunctionExpression" ? (value.body as Expression) : value;
  return script.slice(start, end);
}

/**
 * The same without the language in each call, since it is the function's: the built file is smaller by
 * it. A text in quotation marks can't hold what is looked for, as its own are written \\".
 */
function lean(
  expression: string,
  { language, prefix }: { readonly language: Spoken; readonly prefix: string },
): string {
  const [locale, id] = [JSON.stringify(language.locale), language.rule.id];
  return expression
    .replaceAll(new RegExp(`\\bnumber\\(${locale}, ([\\w.]+), 0\\)`, "g"), `${prefix}count($1)`)
    .replaceAll(new RegExp(`\\bplural\\(([\\w.]+), 0, ${id}, \\{`, "g"), `${prefix}plural($1, {`)
    .replaceAll(new RegExp(`\\b(count|list)\\(([\\w.]+), ${locale}\\)`, "g"), `${prefix}$1($2)`)
    .replaceAll(`, ${locale})`, ")");
}

function parameter(facts: FactTypes): string {
  const members = Object.entries(facts).map(([name, type]) => `readonly ${name}: ${type}`);
  return members.length === 0 ? "" : `d: { ${members.join("; ")} }`;
}

/** The rules of plurals as the compiler has them, and how CLDR writes numbers and lists. */
function rulesModule(further: readonly Spoken[]): string {
  const rules = further.map(
    (language) =>
      `export const ${language.name} = rulesOf({\n  formOf: ${language.rule.formOf.toString()},\n${grammarOf(language.locale)}});\n`,
  );
  // The rules compare digits with numbers, which types refuse.
  return `// @ts-nocheck\n${MADE}\nimport { rulesOf } from "../spoken-language";\n\n${rules.join("\n")}`;
}

function grammarOf(locale: string): string {
  const numbers = new Intl.NumberFormat(locale);
  const group = (value: number) =>
    numbers.formatToParts(value).find(({ type }) => type === "group")?.value;
  const lists = new Intl.ListFormat(locale);
  const between = (items: readonly string[]) =>
    lists.formatToParts(items).flatMap(({ type, value }) => (type === "literal" ? [value] : []));
  const [two] = between(["a", "b"]);
  const [early, last] = between(["a", "b", "c"]);
  const members = {
    thousands: group(1_234_567) ?? "",
    apartFrom: group(1234) === undefined ? 10_000 : 1000,
    between: { two, early, last },
  };
  return Object.entries(members)
    .map(([key, value]) => `  ${key}: ${JSON.stringify(value)},\n`)
    .join("");
}
