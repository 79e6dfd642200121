/** What the compiled messages call, in English: a further language brings its own rules. */

/** The form for a number, by the names of CLDR. Source: Unicode CLDR, plural rules, cardinals. */
export const pluralForm = (value: number): "one" | "other" => (value === 1 ? "one" : "other");

/** The form that fits a number; one that is given for that very number goes before the rule. */
export function plural(value: number, forms: Readonly<Record<string, string>>): string {
  return forms[value] ?? forms[pluralForm(value)] ?? (forms.other as string);
}

export function select(value: string, forms: Readonly<Record<string, string>>): string {
  return forms[value] ?? (forms.other as string);
}

/** A whole number with its thousands apart. @example count(50000) // "50,000" */
export function count(value: number): string {
  const digits = String(Math.abs(Math.round(value)));
  return (value < 0 ? "−" : "") + digits.replace(/\B(?=(\d{3})+$)/g, ",");
}

/** A share as a percentage without decimals, its sign never on a line of its own. @example share(0.641) // "64\u00a0%" */
export function share(value: number): string {
  return `${Math.round(value * 100)}\u00a0%`;
}

/** @example list(["a", "b", "c"]) // "a, b and c" */
export function list(items: readonly string[]): string {
  if (items.length < 2) return items.join("");
  return `${items.slice(0, -1).join(", ")} and ${items[items.length - 1]}`;
}
