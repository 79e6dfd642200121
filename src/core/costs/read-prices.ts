import { HOUR, isUsualMeasure, type Measure, measureOf, PIECE } from "../amounts";
import { type Cell, cellText, type DecimalMark, type Grid, shortened } from "../cells";
import { InputError } from "../faults";
import { lazily } from "../lazily";
import {
  besideTable,
  columnRemarks,
  type RowFault,
  type RowTrouble,
  rowMustBeReady,
  tableAt,
  withoutDittos,
} from "../tables";
import { normalText, tableWords, wordPattern, wordSet } from "../words";
import type { UnpricedItem } from "./cost-remark";
import { readPrice } from "./read-price";
import { DIGITS, writtenNumber } from "./written-number";

export const priceWords = lazily(() => tableWords("prices"));

/** Where its columns stand, as `orderTable`; null where the grid has no header of such a table. */
export function priceTable(grid: Grid, byWordsAlone?: boolean) {
  return besideTable(grid, {
    kind: "prices",
    words: priceWords(),
    required: ["item", "price"],
    byWordsAlone,
  });
}

/** Items that mean the work of one person. */
const WORK = wordSet((words) => words.work);

/** What one of the smallest unit of a kind costs; see units.ts. */
export interface Price {
  /** Of the item as it is written. */
  readonly item: string;
  /** Null where the table names no unit: any in which the item is needed. */
  readonly kind: string | null;
  /** The unit as it is written; empty where the table names none. */
  readonly unit: string;
  readonly each: number;
}

export interface PricesReading {
  /** Prices by item in normal form; more than one where it is priced by several kinds of unit. */
  readonly ofItem: ReadonlyMap<string, readonly Price[]>;
  /** Of an hour of one person; null where the table has none. */
  readonly hour: number | null;
  /** What could not be used, or was read in a way of its own. */
  readonly troubles: readonly RowTrouble[];
}

export const NO_PRICES: PricesReading = { ofItem: new Map(), hour: null, troubles: [] };

/**
 * Reads the table of prices. `Per` is a unit or a number of them ("m", "100", "50 kg"); blank is
 * the unit in which the timetable's Needs have the item, and an hour for work. A row that can't be
 * read is left out and said. Of two prices of one item the higher counts, and that is said.
 *
 * @param grid null where no prices are given
 * @param nameOf our name for one that was told
 * @throws InputError "no-header-row"; "row-not-ready" when a cell shows an error or is still loading
 */
export function readPrices(
  written: Grid | null,
  decimalMark: DecimalMark | null,
  nameOf: (word: string) => string = (word) => word,
): PricesReading {
  if (written === null) return NO_PRICES;
  const found = priceTable(written);
  if (found === null) {
    const columns = ["Item", "Price"];
    throw new InputError({ code: "no-header-row", argument: "prices", columns });
  }
  const { grid, remarks: ofDittos } = withoutDittos(written, "prices", {
    table: found,
    fields: ["item", "price", "per"],
  });
  const table = { ...found, ...tableAt(grid, found.headerRow, found.columnOf) };
  const ofItem = new Map<string, readonly Price[]>();
  const troubles: RowTrouble[] = [];
  let hour: number | null = null;
  for (const row of table.rows) {
    rowMustBeReady("prices", table, row);
    const at = { table: "prices", row: row + 1 } as const;
    const leaveOut = (why: RowFault) => troubles.push({ code: "row-left-out", ...at, why });
    const item = nameOf(cellText(table.cell(row, "item")));
    const noteSecond = () =>
      troubles.push({
        code: "row-noted",
        ...at,
        what: { code: "second-price", item: shortened(item) },
      });
    const key = normalText(item);
    const price = readPrice(table.cell(row, "price"), decimalMark);
    const per = readPer(table.cell(row, "per"), key, decimalMark);
    if (key === "") leaveOut({ code: "no-item-named" });
    else if (price === null) leaveOut({ code: "no-price", item: shortened(item) });
    else if (typeof price === "object") leaveOut(price);
    else if ("code" in per) leaveOut(per);
    else if (WORK.has(key)) {
      const measure = per.measure ?? HOUR;
      if (measure.kind !== HOUR.kind) {
        leaveOut({ code: "not-by-time", item: shortened(item) });
        continue;
      }
      const each = (price / (per.amount * measure.size)) * HOUR.size;
      if (hour !== null) noteSecond();
      hour = Math.max(hour ?? 0, each);
    } else {
      const kind = per.measure?.kind ?? null;
      const each = price / (per.amount * (per.measure?.size ?? 1));
      const before = ofItem.get(key) ?? [];
      const same = before.find((one) => one.kind === kind);
      if (same !== undefined) noteSecond();
      ofItem.set(key, [
        ...before.filter((one) => one !== same),
        {
          item: same?.item ?? item,
          unit: same?.unit ?? per.unit,
          kind,
          each: Math.max(each, same?.each ?? 0),
        },
      ]);
    }
  }
  return { ofItem, hour, troubles: [...troubles, ...ofDittos, ...columnRemarks("prices", table)] };
}

const LEAST = 1e-6;
const MOST = 1e9;

interface Per {
  readonly amount: number;
  /** As it is written, empty where none is. */
  readonly unit: string;
  /** Null where no unit is named. */
  readonly measure: Measure | null;
}

const amountOfUnit = lazily(
  () =>
    new RegExp(
      `^(?:(?:${wordPattern((words) => words.per)})\\b|/)?\\s*(${DIGITS})?[\\s-]*(\\D.*)?$`,
      "iu",
    ),
);

/**
 * "m", "100", "50 kg", "per 1,000"; a bag priced by the bag is priced by the piece.
 *
 * @param item in normal form
 * @returns what is wrong with one that can't be read
 */
function readPer(cell: Cell, item: string, decimalMark: DecimalMark | null): Per | RowFault {
  const text = cellText(cell);
  const match = amountOfUnit().exec(text.trim());
  const unit = match?.[2]?.trim() ?? "";
  const written = match?.[1] === undefined ? 1 : writtenNumber(match[1], decimalMark);
  const amount = typeof cell === "number" ? cell : written;
  const isUsual = isUsualMeasure(unit);
  const isNamed = isUsual || !/\d/.test(unit);
  if (match === null || amount === null || amount < LEAST || amount > MOST || !isNamed) {
    return { code: "not-a-unit", found: shortened(text) };
  }
  const isItem = !isUsual && [item, `${item}s`].includes(normalText(unit));
  return { amount, unit, measure: unit === "" ? null : isItem ? PIECE : measureOf(unit) };
}

/** An item needed that has no price in the unit in which it is needed. */
export function unpriced({ ofItem }: PricesReading, item: string, unit: string): UnpricedItem {
  const prices = ofItem.get(normalText(item)) ?? [];
  return {
    item: shortened(item),
    unit: shortened(unit),
    pricedBy: prices.map((one) => shortened(one.unit)),
  };
}

/** What an amount of an item costs; null where the item has no price in such a unit. */
export function priceOf(
  { ofItem }: PricesReading,
  { item, amount, unit }: { readonly item: string; readonly amount: number; readonly unit: string },
): number | null {
  const prices = ofItem.get(normalText(item)) ?? [];
  const { kind, size } = measureOf(unit);
  const inKind = prices.find((one) => one.kind === kind);
  if (inKind !== undefined) return inKind.each * amount * size;
  const any = prices.find((one) => one.kind === null);
  return any === undefined ? null : any.each * amount;
}
