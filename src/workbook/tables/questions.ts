import type { PlainValue, Question } from "../../wire/writing";
import type { Asked, TooLong } from "../../wording/writing-codes";
import { LONGEST_TEXT } from "../host/safe-text";
import { plainText, type RecordsNow } from "../reading/records-tab";
import type { PlannedCell } from "./planned-cell";

/** A question about a cell with both values; about none where they are left out. */
export function question(
  ask: Asked,
  stands: PlainValue = null,
  would: PlainValue = null,
): Question {
  return { id: JSON.stringify(ask), ask, stands, would };
}

/** Texts, by what they are, that a cell does not hold whole. */
export function tooLong(texts: { readonly [What in TooLong["what"]]?: string }): TooLong[] {
  return (Object.keys(texts) as TooLong["what"][]).flatMap((what): TooLong[] => {
    const { length } = texts[what] ?? "";
    return length > LONGEST_TEXT ? [{ code: "tooLong", what, length, most: LONGEST_TEXT }] : [];
  });
}

/** Cells that hold something already. */
export function occupied({ door }: RecordsNow, writes: readonly PlannedCell[]): Question[] {
  return writes
    .filter(({ before }) => before !== "")
    .map(({ cell, header, before, after }) => {
      const [stands, would] = [plainText(door, before), plainText(door, after)];
      const ask: Asked = {
        // What the log can't hold whole can't be put back whole.
        code: stands.length > LONGEST_TEXT ? "holdsTooMuch" : "holdsAlready",
        header,
        cell,
        stands: short(stands),
        would: short(would),
      };
      return question(ask, stands, would);
    });
}

/** A text as a question repeats it. */
export function short(text: string): string {
  return text.length > LONGEST_SHOWN ? `${text.slice(0, LONGEST_SHOWN)}…` : text;
}

const LONGEST_SHOWN = 200;
