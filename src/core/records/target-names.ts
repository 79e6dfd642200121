import { type BatchFact, type EventFact, normalText } from "../words";
import type { ColumnTarget, HeaderWords } from "./column-target";
import type { Trouble } from "./trouble";

export const FACT_NAMES: Readonly<Record<BatchFact | EventFact, string>> = {
  batch: "Batch",
  fromLot: "From lot",
  variety: "Variety",
  rootstock: "Rootstock",
  crop: "Crop",
  method: "Method",
  place: "Place",
  grafter: "Grafter",
  scionSource: "Scion source",
  culled: "Culled",
  dispatched: "Dispatched",
  closed: "Closed",
  note: "Note",
  eventDay: "Day",
  eventStep: "Step",
  eventCount: "Count",
  eventPerson: "Person",
  eventReason: "Reason",
};

/** The fact that one of our column names stands for; null when it is none of them. */
export function factNamed(name: string): string | null {
  const wanted = normalText(name);
  const found = Object.entries(FACT_NAMES).find(([, text]) => normalText(text) === wanted);
  return found?.[0] ?? null;
}

/** What a person writes for a column that is not to be read at all. */
export const LEAVE_ALONE = "Leave alone";

export function isLeaveAlone(name: string): boolean {
  return normalText(name) === normalText(LEAVE_ALONE);
}

/** What a person has said of the columns of a sheet, by header in the sheet. */
interface Told {
  /** Null for a column to leave alone. */
  readonly targets: ReadonlyMap<string, ColumnTarget | null>;
  readonly troubles: readonly Trouble[];
}

/**
 * What a person has said of the columns of a sheet. A column that was given a name which we do not know,
 * such as a step of another timetable, is left alone: it is surely none of ours. A header that the sheet
 * lacks is passed over, since what is told is one table for all tabs.
 *
 * @param told    our column name by the header in the sheet
 * @param headers the headers that the sheet has
 */
export function targetsTold(
  told: ReadonlyMap<string, string>,
  headers: readonly string[],
  words: HeaderWords,
): Told {
  const targets = new Map<string, ColumnTarget | null>();
  const troubles: Trouble[] = [];
  for (const [header, name] of told) {
    const inSheet = headerInSheet(header, headers);
    if (inSheet === undefined) {
      troubles.push({ row: null, column: header, found: name, code: "no-such-header" });
      continue;
    }
    const target = targetTold(name, words);
    targets.set(inSheet, target ?? null);
    if (target === undefined) {
      troubles.push({ row: null, column: inSheet, found: name, code: "no-such-column" });
    }
  }
  return { targets, troubles };
}

/** The sheet's own spelling of a header, capitals, accents and spaces aside. */
export function headerInSheet(header: string, headers: readonly string[]): string | undefined {
  return headers.find((one) => normalText(one) === normalText(header));
}

/** What one of our names stands for; null to leave a column alone, undefined when it is none. */
export function targetTold(name: string, words: HeaderWords): ColumnTarget | null | undefined {
  return isLeaveAlone(name) ? null : words.understand(name)[0]?.target;
}
