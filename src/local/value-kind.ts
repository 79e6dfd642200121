/**
 * What kind a value is, whichever context made it: `instanceof` fails for values of another one,
 * and Node's own tests do not exist in a browser.
 */
export function isDate(value: unknown): value is Date {
  return tagOf(value) === "[object Date]";
}

/** The same of a promise. */
export function isPromise(value: unknown): value is Promise<unknown> {
  return tagOf(value) === "[object Promise]";
}

/** A plain object or one without a prototype; not an array, a Date, a Map or the like. */
export function isPlainObject(value: unknown): value is Record<string, unknown> {
  return tagOf(value) === "[object Object]";
}

function tagOf(value: unknown): string {
  return Object.prototype.toString.call(value);
}
