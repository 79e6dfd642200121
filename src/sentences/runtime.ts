/**
 * What the compiled messages call. Names and order of arguments are those of the compiler
 * (@messageformat/core); a formatter is called with the value and the language's code.
 */

type Language = "en";

/** A form for each number, by the names of CLDR. Source: Unicode CLDR, plural rules, cardinals. */
export const en = (value: number): "one" | "other" => (value === 1 ? "one" : "other");

/** The form that fits a number; one that is given for that very number goes before the rule. */
export function plural(
  value: number,
  offset: number,
  rule: (value: number) => string,
  forms: Readonly<Record<string, string>>,
): string {
  return forms[value] ?? forms[rule(value - offset)] ?? (forms.other as string);
}

export function select(value: string, forms: Readonly<Record<string, string>>): string {
  return forms[value] ?? (forms.other as string);
}

/** The # of a plural. @example number("en", 50000, 0) // "50,000" */
export function number(language: Language, value: number, offset: number): string {
  return count(value - offset, language);
}

/** A whole number with its thousands apart. @example count(50000, "en") // "50,000" */
export function count(value: number, _language: Language): string {
  const digits = String(Math.abs(Math.round(value)));
  return (value < 0 ? "−" : "") + digits.replace(/\B(?=(\d{3})+$)/g, ",");
}

/** A share as a percentage without decimals. @example share(0.641, "en") // "64 %" */
export function share(value: number, _language: Language): string {
  return `${Math.round(value * 100)} %`;
}

const AND: Readonly<Record<Language, string>> = { en: "and" };

/** @example list(["a", "b", "c"], "en") // "a, b and c" */
export function list(items: readonly string[], language: Language): string {
  if (items.length < 2) return items.join("");
  return `${items.slice(0, -1).join(", ")} ${AND[language]} ${items[items.length - 1]}`;
}
