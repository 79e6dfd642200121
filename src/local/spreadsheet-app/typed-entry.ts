import { engineFormula } from "./formula-syntax";
import { localeMarks } from "./locale-marks";
import { typedDay } from "./typed-day";
import { typedNumber } from "./typed-number";
import { unreadFormula } from "./unread-formula";

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
  /** Whether a script writes the text and not a person. */
  readonly byScript: boolean;
  /** The year of a day that is typed without one. */
  readonly year: number;
}

/**
 * Reads a text as the cell of a spreadsheet does that a person types it into. A script that writes
 * a string goes the same way: setValue("1/2") is a day, setValue("=A1") a formula.
 *
 * Source: the reference page of Range.setValues (its sample writes '2.000', '1,000,000', '$2.99')
 * and of appendRow ("=" makes a formula); that an apostrophe or the format "@" keep text as text is
 * done so in public scripts. The format does not keep a script from writing a formula, the apostrophe
 * does: the list of changes of a public project tells of that failure in a live sheet
 * ("setNumberFormat('@') afecta la visualizacion, NO el parseo"). The single cases are from memory. A text such as "+A1" or "-B2*2"
 * becomes a formula here: whether it does in the real spreadsheet is not sure, so what is written
 * by an add-in must be safe against it.
 */
export function typedEntry(
  text: string,
  { locale, textFormat, byScript, year }: TypingIn,
): TypedEntry {
  if (text === "") return { kind: "blank" };
  if (text.startsWith("'")) return { kind: "text", text: text.slice(1), forced: true };
  const isFormula = text.startsWith("=") && text.length > 1;
  if (textFormat && !(byScript && isFormula)) return { kind: "text", text, forced: true };
  if (isFormula) return formulaEntry(text, locale);
  const trimmed = text.trim();
  const truth = trimmed.toUpperCase();
  if (truth === "TRUE" || truth === "FALSE") return { kind: "boolean", value: truth === "TRUE" };
  const marks = localeMarks(locale);
  // Where dots part both days and groups of digits, "1.2" is a day and "1.200" a number.
  const number = typedNumber(trimmed, marks) ?? typedDay(trimmed, marks, year);
  if (number) return { kind: "number", ...number };
  if (/^[+-]\s*[\p{L}\d(]/u.test(text)) return formulaEntry(`=${text}`, locale);
  return { kind: "text", text, forced: false };
}

/** Formulas are kept as the engine spells them; one that the locale can't read shows an error. */
function formulaEntry(text: string, locale: string): TypedEntry {
  return { kind: "formula", formula: engineFormula(text, locale) ?? unreadFormula(text) };
}
