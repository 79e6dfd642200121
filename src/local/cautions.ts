import { cellText } from "./cell-text";
import type { Cell } from "./sheet-cells";

/**
 * The cautions of a due list, each once with the tasks that it goes with: in a table they would
 * repeat on every line.
 * @param rows rows of cells, the header first
 * @returns lines such as "Grafting: ..."; none when there is no column of cautions
 */
export function cautionLines(rows: readonly (readonly (Cell | null)[])[]): string[] {
  const header = rows[0]?.map(cellText) ?? [];
  const caution = header.indexOf("Caution");
  const task = header.indexOf("Task");
  if (caution < 0 || task < 0) return [];
  const tasks = new Map<string, Set<string>>();
  for (const row of rows.slice(1)) {
    const text = cellText(row[caution]);
    if (text === "") continue;
    tasks.set(text, (tasks.get(text) ?? new Set()).add(cellText(row[task])));
  }
  return Array.from(tasks, ([text, names]) => `${Array.from(names).join(", ")}: ${text}`);
}
