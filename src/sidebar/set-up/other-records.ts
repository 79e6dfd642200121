import type { TabCandidate } from "../../workbook/sidebar-calls";
import { counted, listed } from "../controls/count-words";
import { element } from "../controls/element";
import { isolated } from "../controls/shortened";

/** Which tabs with batches are not read, and what to do to have them read; null where there are none. */
export function otherRecords(candidates: readonly TabCandidate[], tab: string): HTMLElement | null {
  const others = candidates.filter((one) => one.tab !== tab);
  if (others.length === 0) return null;
  const names = others.map(
    (one) => `${isolated(one.tab, 40)} (${counted(one.rows, "row", "rows")})`,
  );
  const [areNot, hold, table] =
    others.length === 1
      ? ["it is not", "it holds", "its table"]
      : ["they are not", "they hold", "their tables"];
  return element(
    "p",
    { class: "note" },
    `Only the tab chosen above is read. Batches stand also in ${listed(names)}: ${areNot} read. If ${hold} other batches (another season, say), put ${table}, header and all, below the last row of the tab that is read, and read again.`,
  );
}
