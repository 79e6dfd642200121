import * as text from "../../sentences/made/own-tabs";
import { STILL } from "../host/mark";
import { minuteNow } from "../host/minute-now";
import type { TabCell, TabContent } from "./tab-content";

/**
 * What a tab of one live formula holds.
 *
 * @param answered about how many rows the answer takes
 */
export function live({
  name,
  formula,
  widths,
  formats,
  answered = 0,
}: {
  readonly name: string;
  readonly formula: string;
  readonly widths: readonly number[];
  readonly formats: TabContent["formats"];
  readonly answered?: number;
}): TabContent {
  const rows: TabCell[][] = [[], [{ formula }]];
  // Some rows more than it takes today: an answer that finds no room is an error.
  const tall = Math.ceil(answered * 1.5) + 20;
  return {
    name,
    tall,
    madeBy: text.live({ formula: formula.slice(1) }),
    rows,
    frozenRows: 3,
    widths,
    formats,
  };
}

export interface ValuesOf {
  readonly workbook: GoogleAppsScript.Spreadsheet.Spreadsheet;
  readonly name: string;
  /** The header first. */
  readonly rows: readonly (readonly (string | number | boolean | Date)[])[];
  readonly widths: readonly number[];
  readonly formats: TabContent["formats"];
}

/** What a tab holds that a formula would fill with names: the same rows as values, with initials. */
export function valuesTab({ workbook, name, rows, widths, formats }: ValuesOf): TabContent {
  return {
    name,
    widths,
    formats,
    madeBy: `${name.toLowerCase()}${STILL}, ${text.made({ at: minuteNow(workbook) })}`,
    rows: [[], ...rows.map((row) => row.map(valueCell))],
    frozenRows: 3,
  };
}

/** Whether a tab's content stands still until it is made anew. */
export function standsStill({ rows }: TabContent): boolean {
  return rows.every((row) => row.every((cell) => cell === null || !("formula" in cell)));
}

/** What a tab holds that has no answer: why. */
export function sentenceTab(name: string, sentence: string): TabContent {
  return {
    name,
    madeBy: name.toLowerCase(),
    frozenRows: 1,
    widths: [420],
    formats: {},
    rows: [[], [{ text: sentence }]],
  };
}

function valueCell(value: string | number | boolean | Date): TabCell {
  if (value === "") return null;
  if (typeof value === "number") return { number: value };
  // Of another run of JavaScript than ours, so that it is no Date of ours.
  if (typeof value === "object") return { date: value };
  return { text: String(value) };
}
