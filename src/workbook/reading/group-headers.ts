import { groupColumns, type Records } from "../../core";
import type { ComparableColumn } from "../../wire/set-up";

/** Facts of a batch that put no batches together. */
const OF_ONE_BATCH: readonly string[] = ["batch", "culled", "dispatched", "closed", "note"];

/** Headers of the records by which batches can be put together, each once. */
export function groupHeaders({ columns }: Records): readonly string[] {
  const usable = columns.filter(({ target, header }) => {
    if (header === "") return false;
    return target === null || (target.kind === "fact" && !OF_ONE_BATCH.includes(target.fact));
  });
  return [...new Set(usable.map(({ header }) => header))];
}

/** The same, each with whether people stand in it. */
export function comparableColumns(records: Records): readonly ComparableColumn[] {
  return groupHeaders(records).map((header) => ({
    header,
    people: groupColumns(header, records).some(({ people }) => people),
  }));
}
