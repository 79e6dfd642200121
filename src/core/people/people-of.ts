import { type Batch, type Records, stepIndex } from "../records";
import { namesPeople } from "./people-columns";

/**
 * Everybody whom the records name as the grafter of a batch or in another column of people, each
 * text once: by the first day on which they grafted, and then by the row in which they first stand.
 * So the order stays when rows are sorted anew and when somebody comes.
 */
export function peopleOf(records: Records): readonly string[] {
  const grafting = stepIndex(records, "grafting");
  const dayOf = ({ days }: Batch) =>
    grafting === null ? Number.POSITIVE_INFINITY : (days[grafting] ?? Number.POSITIVE_INFINITY);
  const batches = [...records.batches].sort((a, b) => compare(dayOf(a), dayOf(b)) || a.row - b.row);
  const people = new Set(batches.map(({ grafter }) => grafter));
  for (const { header, column, table, target } of records.columns) {
    if (target !== null || header === "") continue;
    const textOf = (batch: Batch) => (batch.table === table ? records.textIn(batch, column) : "");
    if (!namesPeople(records, header, textOf)) continue;
    for (const batch of batches) people.add(textOf(batch));
  }
  people.delete("");
  return [...people];
}

/** Two that never come are alike. */
function compare(a: number, b: number): number {
  return a === b ? 0 : a < b ? -1 : 1;
}
