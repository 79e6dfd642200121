import { dayColumnReader, settleYear } from "../cells";
import { type CivilDay, isoMonth, monthOf, yearMonthDay } from "../dates";
import { madeOnce } from "../made-once";
import { type Batch, likeName, type Records, stepIndex } from "../records";
import { normalText } from "../words";
import type { GroupColumn } from "./group-column";

/** Columns that the records need not have: they follow from the days in them. */
const MADE_COLUMNS = ["Month", "Season", "Rootstock age in weeks", "Scion days stored"] as const;

type MadeName = (typeof MADE_COLUMNS)[number];

/** Quarters of the year, named by their months, since seasons are not alike everywhere. */
const SEASONS = ["Dec to Feb", "Mar to May", "Jun to Aug", "Sep to Nov"];

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
    const since = start(batch, day);
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

/**
 * The day on which a batch's scions were cut, written as such or as days before grafting. A date that could
 * be read both ways round is the one shortly before the grafting, if one alone is; else null.
 */
export function scionsCutOn(
  records: Records,
): ((batch: Batch, graftedOn: CivilDay) => CivilDay | null) | null {
  const { batches, textIn } = records;
  const columnIn = new Map(
    records.columns
      .filter(({ scionsCut }) => scionsCut)
      .map(({ table, column }) => {
        const own = () => batches.filter((one) => one.table === table);
        const texts = () => own().map((one) => textIn(one, column));
        return [table, { column, ...dayColumnReader(texts, NO_HABITS) }];
      }),
  );
  if (columnIn.size === 0) return null;
  return (batch, graftedOn) => {
    const own = columnIn.get(batch.table);
    if (own === undefined) return null;
    const text = textIn(batch, own.column);
    if (DAYS_BEFORE.test(text)) return (graftedOn - Number(text)) as CivilDay;
    const reading = own.read(text);
    if (reading.kind === "day") return reading.day;
    if (reading.kind === "undated") {
      return settleYear(reading, { neighbours: [graftedOn], sectionYear: null, asOf: null });
    }
    if (reading.kind === "blank" || reading.why.code !== "either-day") return null;
    const [day, more] = reading.why.days.filter(
      (one) => one <= graftedOn && one > graftedOn - SHORTLY,
    );
    return more === undefined ? (day ?? null) : null;
  };
}

const NO_HABITS = { usualOrder: () => null, asOf: null };
/** Less than the shortest month, so that day and month turned round are seldom both within. */
const SHORTLY = 28;
/** Wood is kept for days, not for years. */
const DAYS_BEFORE = /^\d{1,2}$/;

/** The columns that can be made from these records. */
export function madeColumnNames(records: Records): readonly string[] {
  return MADE_COLUMNS.filter((name) => madeColumn(name, records) !== null);
}
