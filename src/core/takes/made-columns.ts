import { readDayText } from "../cells";
import { type CivilDay, isoMonth, monthOf, yearMonthDay } from "../dates";
import { madeOnce } from "../made-once";
import { type Batch, likeName, type Records, stepIndex } from "../records";
import { normalText, wordSet } from "../words";
import type { GroupColumn } from "./group-column";

/** Columns that the records need not have: they follow from the days in them. */
const MADE_COLUMNS = ["Month", "Season", "Rootstock age in weeks", "Scion days stored"] as const;

type MadeName = (typeof MADE_COLUMNS)[number];

/** Quarters of the year, named by their months, since seasons are not alike everywhere. */
const SEASONS = ["Dec to Feb", "Mar to May", "Jun to Aug", "Sep to Nov"];

/** Headers under which the day is written on which scions were cut (our choice of words). */
const SCIONS_CUT = wordSet((words) => words.scionsCut);

/**
 * A column made from the records; null when `name` is none, or the records lack the days for it.
 *
 * Month ("2026-03") and Season are those of the grafting. Rootstock age is the whole weeks from
 * sowing, the lot's own where a batch was taken from one, to grafting. Days stored are those from
 * cutting the scions to grafting.
 */
export function madeColumn(name: string, records: Records): GroupColumn | null {
  const made = MADE_COLUMNS.find((one) => normalText(one) === normalText(name));
  const grafting = stepIndex(records, "grafting");
  if (made === undefined || grafting === null) return null;
  const graftedOn = (batch: Batch) => batch.days[grafting] ?? null;
  const from = valueFrom(made, records);
  if (from === null) return null;
  return {
    name: made,
    people: false,
    valueOf: (batch) => {
      const day = graftedOn(batch);
      return day === null ? "" : from(batch, day);
    },
  };
}

function valueFrom(
  name: MadeName,
  records: Records,
): ((batch: Batch, graftedOn: CivilDay) => string) | null {
  if (name === "Month") {
    const texts = new Map<CivilDay, string>();
    return (_, day) => madeOnce(texts, day, () => isoMonth(monthOf(day)));
  }
  if (name === "Season") {
    return (_, day) => SEASONS[Math.floor((yearMonthDay(day).month % 12) / 3)] as string;
  }
  const start = name === "Scion days stored" ? scionsCutOn(records) : sownOn(records);
  if (start === null) return null;
  const unit = name === "Scion days stored" ? 1 : 7;
  return (batch, day) => {
    const since = start(batch);
    return since === null || since > day ? "" : String(Math.floor((day - since) / unit));
  };
}

function sownOn(records: Records): ((batch: Batch) => CivilDay | null) | null {
  const sowing = stepIndex(records, "sowing");
  if (sowing === null) return null;
  const lots = new Map(records.batches.map((batch) => [likeName(batch.name), batch]));
  return (batch) => {
    const own = batch.days[sowing] ?? null;
    if (own !== null || batch.fromLot === "") return own;
    return lots.get(likeName(batch.fromLot))?.days[sowing] ?? null;
  };
}

function scionsCutOn(records: Records): ((batch: Batch) => CivilDay | null) | null {
  const columns = records.columns.filter(({ header }) => SCIONS_CUT.has(normalText(header)));
  if (columns.length === 0) return null;
  const columnIn = new Map(columns.map(({ table, column }) => [table, column]));
  return (batch) => {
    const column = columnIn.get(batch.table);
    if (column === undefined) return null;
    const reading = readDayText(records.textIn(batch, column));
    return reading.kind === "day" ? reading.day : null;
  };
}

/** The columns that can be made from these records. */
export function madeColumnNames(records: Records): readonly string[] {
  return MADE_COLUMNS.filter((name) => madeColumn(name, records) !== null);
}
