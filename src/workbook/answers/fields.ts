import { WritingError } from "../host/writing-error";

/**
 * Reads one field of what the page sent. Anything may stand there, or nothing: requests come from a
 * page, so nothing in them is trusted. This is the one place where that is met.
 */
export type Field<Value> = (sent: unknown) => Value;

/** How a request is read, field by field; null for a call without one. */
export type Fields<Request> = Request extends null
  ? null
  : { readonly [Name in keyof Request]-?: Field<Request[Name]> };

/** Whatever it is, as text: what is looked up by it is then not found. */
export const anyText: Field<string> = String;

/** The same, but for null. */
export const anyTextOrNull: Field<string | null> = (sent) => (sent === null ? null : String(sent));

/** Null where no text is sent, or an empty one. */
export const textOrNull: Field<string | null> = (sent) =>
  typeof sent === "string" && sent !== "" ? sent : null;

/** '' where no text is sent, or a blank one: the usual is meant. */
export const textOrUsual: Field<string> = (sent) =>
  typeof sent === "string" && sent.trim() !== "" ? sent : "";

/**
 * What a person has entered; '' where nothing is sent.
 *
 * @param label what a refusal calls it
 */
export function entered(label: string): Field<string> {
  return (sent) => {
    if (sent === undefined || sent === null) return "";
    if (typeof sent === "string") return sent.trim();
    if (typeof sent === "number") return String(sent);
    throw new WritingError({ code: "unreadable", name: label });
  };
}

/** NaN where no number is sent: it is refused as missing. */
export const numberEntered: Field<number> = (sent) =>
  typeof sent === "number" ? sent : Number.NaN;

/** NaN for what is no number: it is refused where it would be written. */
export const numberOrNull: Field<number | null> = (sent) => (sent === null ? null : Number(sent));

/** The usual one for anything but a whole number from the least to the most. */
export function wholeNumber({
  least,
  most,
  usual,
}: {
  readonly least: number;
  readonly most: number;
  readonly usual: number;
}): Field<number> {
  return (sent) =>
    typeof sent === "number" && Number.isInteger(sent) && sent >= least && sent <= most
      ? sent
      : usual;
}

export const yes: Field<boolean> = (sent) => sent === true;

export const texts: Field<readonly string[]> = listOf(anyText);

/** One of a few words; the first for anything else. */
export function oneOf<Word extends string>(words: readonly [Word, ...Word[]]): Field<Word> {
  return (sent) => words.find((word) => word === sent) ?? words[0];
}

export function listOf<Value>(field: Field<Value>): Field<readonly Value[]> {
  return (sent) => (Array.isArray(sent) ? sent.map((one) => field(one)) : []);
}

/** Undefined where nothing of the kind is sent: then it is left as it is. */
export const textIfSent: Field<string | undefined> = (sent) =>
  typeof sent === "string" ? sent : undefined;
export const yesOrNoIfSent: Field<boolean | undefined> = (sent) =>
  typeof sent === "boolean" ? sent : undefined;

/** A request, read by its fields; what they do not name is left behind. */
export function record<Request extends object>(
  fields: {
    readonly [Name in keyof Request]: Field<Request[Name]>;
  },
): Field<Request> {
  return (sent) => {
    const given = typeof sent === "object" && sent !== null ? sent : {};
    const read = Object.entries<Field<unknown>>(fields).map(([name, field]) => [
      name,
      field((given as Readonly<Record<string, unknown>>)[name]),
    ]);
    return Object.fromEntries(read) as Request;
  };
}
