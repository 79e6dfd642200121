import * as text from "../../../sentences/made/orders-page";
import { dayText } from "../../controls/day-words";

/** More than any nursery is asked for; a number above has too many noughts. */
export const MOST_WANTED = 1_000_000;
/** Further ahead nobody orders plants: a digit of the year is wrong. */
const MOST_YEARS_AHEAD = 20;

/** What a field of the form holds. */
export interface FieldTyped {
  readonly value: string;
  /** Whether something stands there that the browser takes for none of its kind. */
  readonly badInput: boolean;
}

/** What is wrong with the number of plants wanted; null when nothing. */
export function wantedTrouble({ value, badInput }: FieldTyped): string | null {
  if (value === "" && !badInput) return text.sayWanted();
  const wanted = Number(value);
  if (badInput || !Number.isInteger(wanted) || wanted < 1) return text.wholeNumber();
  if (wanted > MOST_WANTED) return text.tooManyZeros({ most: MOST_WANTED });
  return null;
}

/**
 * What is wrong with the day by which an order is wanted; null when nothing.
 *
 * @param asOf ISO text; null when not known
 */
export function byTrouble({ value, badInput }: FieldTyped, asOf: string | null): string | null {
  if (badInput) return text.dayIncomplete();
  if (value === "") return text.sayBy();
  if (!/^\d{4}-\d\d-\d\d$/.test(value)) return text.yearRight();
  if (asOf === null) return null;
  if (value < asOf) return text.dayIsPast({ asOf: dayText(asOf) });
  const years = Number(value.slice(0, 4)) - Number(asOf.slice(0, 4));
  return years > MOST_YEARS_AHEAD ? text.yearRight() : null;
}
