import { localeMarks } from "./locale-marks";
import { typedDay } from "./typed-day";
import { typedNumber } from "./typed-number";

/** What a cell becomes when a text is typed into it. */
export type TypedEntry =
  | { readonly kind: "blank" }
  | { readonly kind: "formula"; readonly formula: string }
  /** A number, a day or a share, with the format that a cell without one gets; '' for none. */
  | { readonly kind: "number"; readonly value: number; readonly pattern: string }
  | { readonly kind: "boolean"; readonly value: boolean }
  /** `forced` when it stays text only because of an apostrophe or the text format. */
  | { readonly kind: "text"; readonly text: string; readonly forced: boolean };

export interface TypingIn {
  /** Such as "en_GB". */
  readonly locale: string;
  /** Whether the cell has the text format "@". */
  readonly textFormat: boolean;
  /** The year of a day that is typed without one. */
  readonly year: number;
}

/**
 * Reads a text as the cell of a spreadsheet does that a person types it into. A script that writes
 * a string goes the same way: setValue("1/2") is a day, setValue("=A1") a formula.
 *
 * Source: the reference page of Range.setValues (its sample writes '2.000', '1,000,000', '$2.99')
 * and of appendRow ("=" makes a formula); that an apostrophe or the format "@" keep text as text is
 * done so in public scripts. The single cases are from memory. A text such as "+A1" or "-B2*2"
 * becomes a formula here: whether it does in the real spreadsheet is not sure, so what is written
 * by an add-in must be safe against it.
 */
export function typedEntry(text: string, { locale, textFormat, year }: TypingIn): TypedEntry {
  if (text === "") return { kind: "blank" };
  if (text.startsWith("'")) return { kind: "text", text: text.slice(1), forced: true };
  if (textFormat) return { kind: "text", text, forced: true };
  if (text.startsWith("=") && text.length > 1) return formulaEntry(text);
  const trimmed = text.trim();
  const truth = trimmed.toUpperCase();
  if (truth === "TRUE" || truth === "FALSE") return { kind: "boolean", value: truth === "TRUE" };
  const marks = localeMarks(locale);
  // Where dots part both days and groups of digits, "1.2" is a day and "1.200" a number.
  const number = typedNumber(trimmed, marks) ?? typedDay(trimmed, marks, year);
  if (number) return { kind: "number", ...number };
  if (/^[+-]\s*[\p{L}\d(]/u.test(text)) return formulaEntry(`=${text}`);
  return { kind: "text", text, forced: false };
}

/**
 * A spreadsheet takes ";" between arguments in every locale, the engine only ",". Inside braces
 * ";" parts rows, and in texts and names of tabs it is a mark like any other.
 */
function formulaEntry(text: string): TypedEntry {
  let braces = 0;
  const formula = text.replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'|[{};]/g, (mark) => {
    if (mark === "{") braces += 1;
    if (mark === "}") braces -= 1;
    return mark === ";" && braces === 0 ? "," : mark;
  });
  return { kind: "formula", formula };
}
