import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Records } from "../../src/core";
import { type Cell, type CivilDay, civilDay, type Grid, gridOf, isoDay } from "../../src/core";
import { csvRows } from "./csv-rows";

/** Folders of the messy samples. */
export const MESSY_SAMPLES = [
  "french-two-row-header",
  "event-log",
  "seasons-stacked",
  "month-first-totals",
  "lots-and-grafts",
  "scanned-text",
  "spanish-portuguese",
  "indonesian-month-names",
];

/** What a careful clerk reads from a messy sample; see sample-sheets/make/README.md. */
interface Expected {
  readonly asOf: string;
  readonly locale: string;
  readonly tables: readonly string[];
  readonly batches: readonly ExpectedBatch[];
  readonly mustBeListed: readonly Listed[];
  readonly mustBeSaid?: readonly { readonly column: string }[];
  readonly notBatches?: readonly Listed[];
}

interface Listed {
  readonly table: string;
  readonly row: number;
  readonly found: string;
}

interface ExpectedBatch {
  readonly name: string;
  readonly nameless?: boolean;
  readonly days: Readonly<Record<string, string>>;
  readonly counts: Readonly<Record<string, number>>;
  readonly [fact: string]: unknown;
}

interface MessySample {
  readonly expected: Expected;
  readonly grid: Grid;
  /** Row of the grid, from 1, of a row of one of the sample's tables. */
  rowOf(listed: Listed): number;
}

/** The tables of a sample under one another, as a person would stack their ranges. */
export function messySample(folder: string): MessySample {
  const at = join("sample-sheets", folder);
  const expected = JSON.parse(readFileSync(join(at, "expected.json"), "utf8")) as Expected;
  const rows: Cell[][] = [];
  const start = new Map<string, number>();
  for (const table of expected.tables) {
    start.set(table, rows.length);
    for (const row of csvRows(readFileSync(join(at, table), "utf8"))) rows.push(row.map(typed));
  }
  return {
    expected,
    grid: gridOf(rows),
    rowOf: ({ table, row }) => (start.get(table) ?? 0) + row,
  };
}

/** What the records say of each batch, in the shape of the expectation. */
export function asExpected({ batches, stepKeys }: Records): ExpectedBatch[] {
  return batches.map((batch) => {
    const facts: Record<string, unknown> = {};
    for (const fact of [
      "variety",
      "rootstock",
      "place",
      "grafter",
      "scionSource",
      "fromLot",
      "culled",
      "dispatched",
    ] as const) {
      const value = batch[fact];
      if (value !== "" && value !== null) facts[fact] = value;
    }
    const days: Record<string, string> = {};
    const counts: Record<string, number> = {};
    stepKeys.forEach((key, index) => {
      const day = batch.days[index];
      const count = batch.counts[index];
      if (day != null) days[key] = isoDay(day);
      if (count != null) counts[key] = count;
    });
    return { name: batch.name, ...facts, days, counts };
  });
}

/** A cell as a sheet holds it: plain numbers and ISO days are typed, the rest is text. */
function typed(text: string): Cell {
  if (/^-?\d+$/.test(text) || (/^-?\d+\.\d+$/.test(text) && !/^\d{1,3}\.\d{3}$/.test(text))) {
    return Number(text);
  }
  const iso = /^(\d{4})-(\d\d)-(\d\d)$/.exec(text);
  const day = iso && civilDay(Number(iso[1]), Number(iso[2]), Number(iso[3]));
  return day === null ? text : { day: day as CivilDay };
}
