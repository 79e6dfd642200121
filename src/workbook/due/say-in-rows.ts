import { safeText } from "../host/safe-text";
import { DUE_COLUMN } from "../tabs/due-columns";
import { memoryText } from "./due-memory";
import { type DueRow, dueRows } from "./due-rows";
import type { RowState } from "./row-state";

/**
 * Says in the rows of the due tab what became of them, in one write, and clears the answers that were
 * given. The tab is read once more just before: a person may have sorted it meanwhile.
 */
export function sayInRows(
  sheet: GoogleAppsScript.Spreadsheet.Sheet,
  range: GoogleAppsScript.Spreadsheet.Range,
  {
    states,
    changes = new Map(),
  }: {
    readonly states: ReadonlyMap<DueRow, RowState>;
    readonly changes?: ReadonlyMap<DueRow, number>;
  },
): void {
  if (states.size === 0) return;
  const now = dueRows(range.getValues());
  const texts = new Map<DueRow, RowState & { readonly change: number }>();
  for (const [row, state] of states) {
    const stands = standingRow(now, row, texts);
    if (stands === null) continue;
    texts.set(stands, { ...state, change: stands.change + (changes.get(row) ?? 0) });
  }
  const changed = [...texts].filter(
    ([row, { text, memory, change }]) =>
      text !== row.state || memoryText(memory) !== memoryText(row.memory) || change !== row.change,
  );
  const rows = changed.map(([{ row }]) => row);
  if (rows.length > 0) {
    const [first, last] = [Math.min(...rows), Math.max(...rows)];
    const block = now.filter(({ row }) => row >= first && row <= last);
    sheet.getRange(first, DUE_COLUMN.state, block.length, 3).setValues(
      block.map((row) => {
        const { text, memory, change } = texts.get(row) ?? { ...row, text: row.state };
        return [safeText(text), safeText(memoryText(memory)), change === 0 ? "" : change];
      }),
    );
  }
  for (const [{ row, yes }] of texts) {
    if (yes) sheet.getRange(row, DUE_COLUMN.yes).setValue(false);
  }
}

/** Where a row stands by now; null where it can't be told. */
function standingRow(
  now: readonly DueRow[],
  { row, task, batch }: DueRow,
  taken: ReadonlyMap<DueRow, unknown>,
): DueRow | null {
  const alike = now.filter((one) => one.task === task && one.batch === batch && !taken.has(one));
  return alike.find((one) => one.row === row) ?? (alike.length === 1 ? (alike[0] ?? null) : null);
}
