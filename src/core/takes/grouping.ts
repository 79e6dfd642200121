import { InputError } from "../input-error";
import type { Batch } from "../records/batch";
import type { Records } from "../records/records";
import { factNamed } from "../records/target-names";
import { normalText } from "../words/normal-text";

/** A column that batches are grouped by. */
export interface GroupColumn {
  readonly name: string;
  /** The batch's text in it; empty when blank. */
  valueOf(batch: Batch): string;
}

/**
 * The columns named in `by`: one, or several joined with "+". A name is one of ours ("Variety"),
 * or a header as it stands in the sheet, capitals and accents aside.
 *
 * @throws InputError "unknown-column"
 */
export function groupColumns(by: string, records: Records): readonly GroupColumn[] {
  const names = by.split("+").map((name) => name.trim());
  return names.map((name) => groupColumn(name, records));
}

function groupColumn(name: string, records: Records): GroupColumn {
  const fact = factNamed(name);
  const wanted = normalText(name);
  const column =
    records.columns.find(({ target }) => target?.kind === "fact" && target.fact === fact) ??
    records.columns.find(({ header }) => wanted !== "" && normalText(header) === wanted);
  if (column === undefined) {
    const known = records.columns.map(({ header }) => header).filter((header) => header !== "");
    throw new InputError(
      "unknown-column",
      `by names "${name}", which is no column of the records; they have: ${known.join(", ")}`,
    );
  }
  return { name: column.header, valueOf: (batch) => records.textIn(batch, column.column) };
}

/** Batches that share the same texts in the group columns, in order of those texts. */
export interface BatchGroup {
  readonly values: readonly string[];
  readonly batches: readonly Batch[];
}

export function groupBatches(
  batches: readonly Batch[],
  by: readonly GroupColumn[],
): readonly BatchGroup[] {
  const groups = new Map<string, { values: string[]; batches: Batch[] }>();
  for (const batch of batches) {
    const values = by.map((column) => column.valueOf(batch));
    // Capitals alone don't make another group.
    const key = values.join("\n").toLowerCase();
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { values, batches: [batch] });
    else group.batches.push(batch);
  }
  return [...groups.entries()].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, group]) => group);
}
