import { isPlainObject } from "../value-kind";

/**
 * What may pass between a page and the script: numbers, true and false, texts, null, and arrays
 * and objects of these. They are copied. Source: the guide on client-to-server communication.
 */

/**
 * The arguments of a call from a page, as a JSON text.
 * Source of the sentence: an article of a developer, kept in the project's list of platform facts.
 * @throws Error that names the property that may not pass
 */
export function argumentsText(parameters: readonly unknown[]): string {
  const illegal = illegalProperty(parameters, "", []);
  if (illegal !== null) throw new Error(`Failed due to illegal value in property: ${illegal}`);
  return JSON.stringify(parameters);
}

/**
 * What a page gets of the result of a script's function, as a JSON text. One value anywhere in it
 * that may not pass, such as a Date, makes all of it null, without an error.
 */
export function resultText(result: unknown): string {
  if (result === undefined || illegalProperty(result, "", []) !== null) return "null";
  return JSON.stringify(result);
}

/** The name of the first property that may not pass, or null. */
function illegalProperty(value: unknown, name: string, within: readonly unknown[]): string | null {
  if (value === null || value === undefined) return null;
  if (["number", "boolean", "string"].includes(typeof value)) return null;
  const isArray = Array.isArray(value);
  if (!isArray && !isPlainObject(value)) return name;
  if (within.includes(value)) return name;
  const inside = [...within, value];
  for (const [key, item] of Object.entries(value as object)) {
    const found = illegalProperty(item, key, inside);
    if (found !== null) return found;
  }
  return null;
}
