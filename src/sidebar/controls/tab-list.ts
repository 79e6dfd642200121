import { element } from "./element";

export interface TabEntry {
  /** Letters and hyphens: part of ids. */
  readonly key: string;
  readonly title: string;
  readonly panel: HTMLElement;
}

export interface TabList {
  readonly element: HTMLElement;
  /** Shows the section of a key without moving the focus. */
  show(key: string): void;
}

/**
 * Tabs of which one is reached by the Tab key and the others by arrows, Home and End. Moving does
 * not choose: a section reads the workbook when it is chosen, by Enter, space or click.
 *
 * Source: W3C, ARIA Authoring Practices Guide, Tabs pattern (with manual activation).
 */
export function tabList(
  label: string,
  entries: readonly TabEntry[],
  onChoose: (key: string) => void,
): TabList {
  const tabs = entries.map(({ key, title, panel }) => {
    panel.id = `section-${key}`;
    panel.setAttribute("role", "tabpanel");
    panel.setAttribute("aria-labelledby", `tab-${key}`);
    const attributes = { type: "button", role: "tab", id: `tab-${key}`, "aria-controls": panel.id };
    return element("button", attributes, title);
  });
  const reach = (index: number) => {
    tabs.forEach((tab, other) => {
      tab.tabIndex = other === index ? 0 : -1;
    });
  };
  const show = (key: string) => {
    entries.forEach((entry, index) => {
      const chosen = entry.key === key;
      tabs[index]?.setAttribute("aria-selected", String(chosen));
      entry.panel.hidden = !chosen;
      if (chosen) reach(index);
    });
  };
  tabs.forEach((tab, index) => {
    tab.addEventListener("click", () => onChoose(entries[index]?.key ?? ""));
    tab.addEventListener("keydown", (event) => {
      const next = nextIndex(event.key, index, tabs.length);
      if (next === null) return;
      event.preventDefault();
      reach(next);
      tabs[next]?.focus();
    });
  });
  show(entries[0]?.key ?? "");
  return { element: element("div", { role: "tablist", "aria-label": label }, ...tabs), show };
}

/**
 * Where a key leads from a tab, round at the ends; null for keys that mean nothing here.
 *
 * @param index of the tab, from 0
 * @param count how many tabs there are, 1 or more
 * @example nextIndex("ArrowLeft", 0, 6) // 5
 */
export function nextIndex(key: string, index: number, count: number): number | null {
  if (key === "ArrowRight") return (index + 1) % count;
  if (key === "ArrowLeft") return (index + count - 1) % count;
  if (key === "Home") return 0;
  if (key === "End") return count - 1;
  return null;
}
