import * as text from "../../sentences/made/set-up-page";
import type { TabCandidate } from "../../wire/set-up";
import { element } from "../controls/element";
import { isolated } from "../controls/shortened";

/** Which tabs with batches are not read, and what to do to have them read; null where there are none. */
export function otherRecords(candidates: readonly TabCandidate[], tab: string): HTMLElement | null {
  const others = candidates.filter((one) => one.tab !== tab);
  if (others.length === 0) return null;
  const tabs = others.map((one) => text.tabRows({ tab: isolated(one.tab, 40), rows: one.rows }));
  const sentence = text.otherTabs({ tabs, number: others.length });
  return element("p", { class: "note" }, sentence);
}
