import { columnLetters } from "./cell-name";

/**
 * The only place that writes the text of a formula. A spreadsheet does not translate what a script
 * writes: the text must be in the workbook's own syntax, where the comma may be the decimal mark.
 * So between arguments stands ";", which every locale takes, and there is no decimal number and no
 * brace: what would need them is referred to as a cell.
 *
 * Source: several independent public projects of workbooks in French, Spanish, Portuguese and German
 * (platform notes A11, C9); not seen live.
 */
export function formulaCall(name: string, parts: readonly FormulaPart[]): string {
  return `=${callPart(name, parts).text}`;
}

/** A call within a formula. */
export function callPart(name: string, parts: readonly FormulaPart[]): FormulaPart {
  const last = parts.reduce((found, { text }, at) => (text === "" ? found : at), -1);
  const texts = parts.slice(0, last + 1).map(({ text }) => text);
  return { text: `${name}(${texts.join(SEPARATOR)})` };
}

/** Two arguments with a mark of arithmetic or comparison between them. */
export function betweenPart(
  one: FormulaPart,
  mark: "+" | "-" | "*" | "<" | "<>",
  other: FormulaPart,
): FormulaPart {
  return { text: `${one.text}${mark}${other.text}` };
}

/** An argument of a formula. */
export interface FormulaPart {
  readonly text: string;
}

const SEPARATOR = ";";

/** An argument that is left out. */
export const LEFT_OUT: FormulaPart = { text: "" };

/** A text in quotes. */
export function textPart(text: string): FormulaPart {
  return { text: `"${text.replace(/"/g, '""')}"` };
}

/** @throws Error when it is not a whole number of 0 or more, which no locale writes alike */
export function wholePart(number: number): FormulaPart {
  if (!Number.isSafeInteger(number) || number < 0) throw new Error(`${number} is no whole number`);
  return { text: String(number) };
}

/** Cells of the same tab, such as "$B$3". */
export function cellsPart(cells: string): FormulaPart {
  return { text: cells };
}

/** Cells of a tab, such as "$A$9:$B$48" of "Nursery settings". */
export function tabPart(tab: string, cells: string): FormulaPart {
  return { text: `${quotedTab(tab)}!${cells}` };
}

/** A tab's first columns, whole. */
export function columnsPart(tab: string, columns: number): FormulaPart {
  return tabPart(tab, `A:${columnLetters(Math.max(1, columns))}`);
}

/** A formula that says what a cell of a tab says. */
export function sameAs(tab: string, cell: string): string {
  return `=${tabPart(tab, cell).text}`;
}

/**
 * A link that leads to a tab of the workbook and shows its name. "#gid=" and the tab's lasting number is how the
 * spreadsheet's own links to tabs end (public workbooks and scripts of many; not seen live).
 */
export function linkTo(tab: GoogleAppsScript.Spreadsheet.Sheet): string {
  return formulaCall("HYPERLINK", [textPart(`#gid=${tab.getSheetId()}`), textPart(tab.getName())]);
}

/** The day it is, to be written into a cell of its own. */
export const TODAY = "=TODAY()";

function quotedTab(tab: string): string {
  return `'${tab.replace(/'/g, "''")}'`;
}

/** Whether a formula begins with a call of one of our functions, whose names have a "_". */
export function isOurFormula(formula: string): boolean {
  return /^=[A-Z]+(?:_[A-Z]+)+\(/.test(formula);
}

/** Whether a formula is a call of a function. */
export function isCallOf(name: string, formula: string): boolean {
  return formula.startsWith(`=${name}(`);
}

/**
 * Whether two formulas say the same, whatever stands between arguments: a spreadsheet gives a formula
 * back in the workbook's own syntax, without spaces and without quotes that a tab's name can do
 * without. What stands in quotes is compared to the letter.
 */
export function sameFormula(one: string, other: string): boolean {
  return plain(one) === plain(other);
}

/** Quoted text, quoted names of tabs, and what stands between. */
const PARTS = /"(?:[^"]|"")*"|'(?:[^']|'')*'|[^"']+/g;

function plain(formula: string): string {
  return (formula.match(PARTS) ?? [])
    .map((part) => {
      if (part.startsWith('"')) return part;
      if (part.startsWith("'")) return part.slice(1, -1).replace(/''/g, "'");
      return part.replace(/\s+/g, "").replace(/,/g, SEPARATOR);
    })
    .join("");
}
