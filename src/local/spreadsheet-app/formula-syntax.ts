import { localeMarks } from "./locale-marks";
import { unreadText } from "./unread-formula";

/**
 * How formulas are spelled in workbooks of a locale. The engine knows one spelling alone, that of
 * `ENGINE_SYNTAX`, and keeps every formula in it; so a change of the locale changes how a formula
 * reads and not what it does.
 */
interface FormulaSyntax {
  readonly decimal: "." | ",";
  /** Stands between arguments when a formula is read back; ";" may be written everywhere. */
  readonly argument: "," | ";";
  /** Parts columns within braces; rows are parted by ";" everywhere. */
  readonly column: "," | "\\";
}

const ENGINE_SYNTAX: FormulaSyntax = { decimal: ".", argument: ",", column: "," };
const DECIMAL_COMMA: FormulaSyntax = { decimal: ",", argument: ";", column: "\\" };

/**
 * Names of functions stay English in every locale. Sources: public projects that met `#ERROR!`
 * with "," between arguments or a decimal point in workbooks of fr, de, es_AR and pt_BR
 * (google-marketing-solutions/advanced-bidding-manager#1, ISA-tools/OntoMaton#37), that took ";"
 * in all locales (mricon/ingress-fieldplan#5), and cartularium.pages.dev/ARRAY_LITERAL for the
 * backslash within braces. Whether a locale has a decimal comma is what the language data of the
 * JavaScript engine say; for en_ZA they say so, which is *assumed* of the cloud, not known.
 */
function syntaxOf(locale: string): FormulaSyntax {
  return localeMarks(locale).decimal === "," ? DECIMAL_COMMA : ENGINE_SYNTAX;
}

/**
 * A formula as the engine spells it.
 * @param text with its "=", as a person or a script writes it in a workbook of the locale
 * @returns null where the cloud shows `#ERROR!` with "Formula parse error."
 */
export function engineFormula(text: string, locale: string): string | null {
  return respelled(text, syntaxOf(locale), ENGINE_SYNTAX);
}

/** A formula of the engine as a workbook of the locale shows it and `getFormula` gives it back. */
export function shownFormula(formula: string, locale: string): string {
  const unread = unreadText(formula);
  if (unread !== null) return unread;
  return respelled(formula, ENGINE_SYNTAX, syntaxOf(locale)) ?? formula;
}

type Kind = "space" | "kept" | "name" | "number" | "mark";

/** Texts, names of tabs in quotes, names of columns in brackets: nothing in them is touched. */
const KEPT = /"(?:[^"]|"")*"|'(?:[^']|'')*'|\[[^\]]*\]/y;
const SPACE = /\s+/y;
/** Functions, references, errors. A full stop within is no decimal point: STDEV.S */
const NAME = /#[A-Z]+(?:\/[A-Z0-9]+)?[!?]?|[$\p{L}_][$\p{L}\p{N}_.]*/uy;
const NUMBER = {
  ".": /(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?/y,
  ",": /(?:\d+(?:,\d+)?|,\d+)(?:[eE][+-]?\d+)?/y,
} as const;
const SEPARATORS = new Set([",", ";", "\\"]);
/** Marks that only stand here when a text, a name or a number was not well-formed. */
const STRAY = new Set(['"', "'", "."]);
const PARTNER: Readonly<Record<string, string>> = { ")": "(", "}": "{" };

/** @returns null when the text is no formula in the first syntax */
function respelled(text: string, from: FormulaSyntax, to: FormulaSyntax): string | null {
  const open: string[] = [];
  let respelling = "";
  // A number can stand only where something is wanted: in "A1,5" none begins with the comma.
  let wanted = true;
  for (let at = 0; at < text.length; ) {
    const [kind, part] = partAt(text, at, { marks: from, wanted });
    at += part.length;
    if (kind === "number" && !wanted) return null;
    if (kind === "number") respelling += part.replace(from.decimal, to.decimal);
    else if (kind !== "mark") respelling += part;
    else {
      if (part === "(" || part === "{") open.push(part);
      if (part in PARTNER && open.pop() !== PARTNER[part]) return null;
      const mark = SEPARATORS.has(part) ? separator(part, { within: open.at(-1), from, to }) : part;
      if (mark === null || STRAY.has(part)) return null;
      respelling += mark;
    }
    if (kind !== "space") wanted = kind === "mark" && !(part in PARTNER) && part !== "%";
  }
  return open.length === 0 ? respelling : null;
}

function separator(
  part: string,
  {
    within,
    from,
    to,
  }: {
    readonly within: string | undefined;
    readonly from: FormulaSyntax;
    readonly to: FormulaSyntax;
  },
): string | null {
  if (within === "(") return part === ";" || part === from.argument ? to.argument : null;
  if (within !== "{") return null;
  if (part === ";") return ";";
  return part === from.column ? to.column : null;
}

function partAt(
  text: string,
  at: number,
  { marks: { decimal }, wanted }: { readonly marks: FormulaSyntax; readonly wanted: boolean },
): [Kind, string] {
  const found = (shape: RegExp): string => {
    shape.lastIndex = at;
    return shape.exec(text)?.[0] ?? "";
  };
  const mark = text[at] ?? "";
  const space = found(SPACE);
  if (space) return ["space", space];
  const kept = found(KEPT);
  if (kept) return ["kept", kept];
  const name = found(NAME);
  if (name) return ["name", name];
  const number = wanted || /\d/.test(mark) ? found(NUMBER[decimal]) : "";
  return number ? ["number", number] : ["mark", mark];
}
