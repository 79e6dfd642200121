import { isoDay } from "../../core";
import { cellText } from "../../core/cells/cell";
import { type Batch, TEXT_FACTS } from "../../core/records/batch";
import type { Listed, Reading } from "./reading";
import { type BatchAt, columnIndex, type SheetTable } from "./sheet";

/** Something that the messy sheet was read otherwise in than the clean one. */
export interface Difference {
  /** Row of the messy sheet, from 1. */
  readonly row: number;
  /** Which column, by roleKey; "row" for a batch that is missing or too many. */
  readonly what: string;
  readonly clean: string;
  readonly read: string;
  /** BATCH_CHECK's trouble that says so; null where nothing says so. */
  readonly listedAs: string | null;
}

export type Outcome = "identical" | "listed" | "silent";

export function outcomeOf(differences: readonly Difference[]): Outcome {
  if (differences.length === 0) return "identical";
  return differences.some(({ listedAs }) => listedAs === null) ? "silent" : "listed";
}

/**
 * Holds the reading of a messy sheet against that of the clean one, batch by batch. A batch without
 * a name in the sheet is rightly called by its row.
 */
export function differences(clean: Reading, messy: Reading): Difference[] {
  if (clean.records === null) throw new Error(`the clean sheet was refused: ${clean.refusal}`);
  if (messy.records === null) {
    return [{ row: 0, what: "row", clean: "", read: "", listedAs: messy.refusal }];
  }
  tallyAddsUp(messy);
  const found: Difference[] = [];
  const readByRow = new Map(messy.records.batches.map((batch) => [batch.row, batch]));
  const cleanByRow = new Map(clean.records.batches.map((batch) => [batch.row, batch]));
  /** What should be read in each row of the messy sheet. */
  const wantedIn = new Map<number, Batch>();
  for (const [number, at] of clean.batchesAt) {
    const wanted = cleanByRow.get(at.row);
    const batchRow = messy.batchesAt.get(number);
    if (wanted === undefined || batchRow === undefined)
      throw new Error(`batch ${number} went lost`);
    wantedIn.set(batchRow.row, wanted);
    const read = readByRow.get(batchRow.row);
    readByRow.delete(batchRow.row);
    const { row } = batchRow;
    const listedAs = (what: string) =>
      listedFor({
        outcome: messy,
        batch: batchRow,
        read,
        what,
        counts: (listed) => !alsoOfClean(clean, at.row, listed),
      });
    if (read === undefined) {
      const difference = { row, what: "row", clean: wanted.name, read: "no batch" };
      found.push({ ...difference, listedAs: listedAs("row") });
      continue;
    }
    const now = valuesOf(read, messy.records.stepKeys);
    for (const [what, value] of valuesOf(wanted, clean.records.stepKeys)) {
      const right = what === "batch" ? (nameIn(batchRow) ?? `Row ${row}`) : value;
      const other = now.get(what) ?? "";
      if (other !== right) {
        found.push({ row, what, clean: right, read: other, listedAs: listedAs(what) });
      }
    }
  }
  for (const [row, batch] of readByRow) {
    const listedAs = messy.listed.find((one) => one.row === row)?.trouble ?? null;
    found.push({ row, what: "row", clean: "no batch", read: batch.name, listedAs });
  }
  return found.map((one) => (one.what === "given" ? toldOfTaken(one, found, wantedIn) : one));
}

/** What a lot gave is the sum of other rows: it is told of where a difference in one of those is. */
function toldOfTaken(
  given: Difference,
  found: readonly Difference[],
  wantedIn: ReadonlyMap<number, Batch>,
): Difference {
  const lot = wantedIn.get(given.row)?.name;
  const told = found.find(
    ({ row, listedAs }) => listedAs !== null && wantedIn.get(row)?.fromLot === lot,
  );
  return { ...given, listedAs: given.listedAs ?? told?.listedAs ?? null };
}

/** Everything that was read of a batch, as text, by roleKey, and what it gave. */
function valuesOf(batch: Batch, stepKeys: readonly string[]): Map<string, string> {
  const values = new Map<string, string>([
    ["batch", batch.name],
    ["culled", String(batch.culled ?? "")],
    ["dispatched", String(batch.dispatched ?? "")],
    ["closed", String(batch.closed)],
    ["given", String(batch.given)],
  ]);
  for (const fact of TEXT_FACTS) values.set(fact, batch[fact]);
  stepKeys.forEach((key, index) => {
    const day = batch.days[index] ?? null;
    values.set(`day of ${key}`, day === null ? "" : isoDay(day));
    values.set(`count of ${key}`, String(batch.counts[index] ?? ""));
  });
  return values;
}

function nameIn({ table, cells }: BatchAt): string | null {
  return cellText(cells[columnIndex(table.columns, "batch")] ?? "") || null;
}

/** The trouble that names a row's cell, the row as a whole, or the column. */
function listedFor({
  outcome: { listed, records },
  batch: { row, table },
  read,
  what,
  counts,
}: {
  readonly outcome: Reading;
  readonly batch: BatchAt;
  readonly read: Batch | undefined;
  readonly what: string;
  readonly counts: (listed: Listed) => boolean;
}): string | null {
  const column = columnIndex(table.columns, what);
  const headers = new Set(headersOf(table, column));
  for (const match of records?.columns ?? []) {
    if (match.column === column && match.table === read?.table) headers.add(match.header);
  }
  const one = listed.find(
    (trouble) =>
      counts(trouble) &&
      (trouble.row === row
        ? trouble.column === "" || what === "row" || headers.has(trouble.column)
        : trouble.row === null && headers.has(trouble.column)),
  );
  return one?.trouble ?? null;
}

function headersOf({ columns }: SheetTable, index: number): string[] {
  const column = columns[index];
  if (column === undefined) return [];
  const { upper, lower } = column;
  return [upper, lower, `${upper} ${lower}`].map(cellText).filter((text) => text !== "");
}

/** A trouble that the clean sheet has too says nothing of how this one was read. */
function alsoOfClean(clean: Reading, row: number, { trouble }: Listed): boolean {
  return clean.listed.some((one) => one.row === row && one.trouble === trouble);
}

/** @throws Error when a row of the sheet is neither used nor listed nor blank */
function tallyAddsUp({ records, grid }: Reading): void {
  if (records === null) return;
  const { heading, used, leftOut, notBatches, blank } = records.rows;
  const sum = heading + used + leftOut + notBatches + blank;
  if (sum !== grid.rowCount) throw new Error(`${sum} rows tallied of ${grid.rowCount}`);
}
