import type { Realm } from "../bundle";

/**
 * Makes values with the constructors of the context that a script runs in, so that they are
 * arrays, dates and errors to that script.
 */
export interface ScriptRealm extends Realm {
  /** An error with the name "Exception", as services throw. */
  exception(message: string): Error;
  /** The value of a JSON text. */
  parse(json: string): unknown;
}

/** The source of a function that makes a realm, to be evaluated in the script's own context. */
export const REALM_SOURCE = `({
  date: function (instant) { return new Date(instant); },
  array: function (items) { return Array.from(items); },
  parse: function (json) { return JSON.parse(json); },
  exception: function (message) {
    var error = new Error(message);
    error.name = "Exception";
    return error;
  },
})`;

/** The realm of a context, by its constructors. */
export function realmOf(
  context: Pick<typeof globalThis, "Date" | "Array" | "JSON" | "Error">,
): ScriptRealm {
  const { Date: OwnDate, Array: OwnArray, JSON: ownJson, Error: OwnError } = context;
  return {
    date: (instant) => new OwnDate(instant),
    array: (items) => OwnArray.from(items),
    parse: (json) => ownJson.parse(json),
    exception(message) {
      const error = new OwnError(message);
      error.name = "Exception";
      return error;
    },
  };
}

/** That of the context that this code itself runs in. */
export const ownRealm = (): ScriptRealm => realmOf(globalThis);
