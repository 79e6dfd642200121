import { numfmt } from "@univerjs/core";

/** A workbook has few formats and many cells. */
const datePatterns = new Map<string, boolean>([
  ["", false],
  ["General", false],
]);

/** True when a number format shows a day or a time, such as "yyyy-mm-dd". */
export function isDatePattern(pattern: string): boolean {
  let isDate = datePatterns.get(pattern);
  if (isDate === undefined) {
    isDate = numfmt.isDateFormat(pattern);
    datePatterns.set(pattern, isDate);
  }
  return isDate;
}

/** True when a number format keeps what is typed as text. */
export function isTextPattern(pattern: string): boolean {
  return pattern === "@";
}

/**
 * The words for errors that the engine has and the imitated spreadsheet lacks.
 * Source for #REF! on a blocked spill: messages quoted in public Apps Script projects ("Array
 * result was not expanded because it would overwrite data in ..."); the others from memory.
 */
const ERROR_NAMES: Readonly<Record<string, string>> = {
  "#SPILL!": "#REF!",
  "#CYCLE!": "#REF!",
  "#CALC!": "#VALUE!",
  "#GETTING_DATA": "Loading...",
};

/** How the imitated spreadsheet words one of the engine's errors. */
export function errorName(engineError: string): string {
  return ERROR_NAMES[engineError] ?? engineError;
}

const ERROR = /^#(?:N\/A|VALUE!|REF!|DIV\/0!|NAME\?|NUM!|NULL!|SPILL!|CALC!|CYCLE!|ERROR!)$/;

/** True for the text of an error value. */
export function isErrorText(value: unknown): value is string {
  return typeof value === "string" && ERROR.test(value);
}
