import { type Child, element } from "../controls/element";

/** The words at the two ends of what is drawn; the drawings name their own values to those who listen. */
export function scaleLine(least: string, most: string): HTMLElement {
  return element(
    "div",
    { class: "scale", "aria-hidden": "true" },
    element("span", {}, least),
    element("span", {}, most),
  );
}

export interface DrawnList {
  /** Names what is drawn for those who listen. */
  readonly label: string;
  /** What stands at the left end of each drawing, and at the right. */
  readonly ends: readonly [string, string];
  readonly entries: readonly Node[];
}

/** Drawings one below the other under one scale. */
export function drawnList({ label, ends, entries }: DrawnList): HTMLElement {
  return element("div", { role: "group", "aria-label": label }, scaleLine(...ends), ...entries);
}

/** What is drawn, by its name, and its value in words on the same line. */
export function drawnWords(tag: "p" | "span", name: Child, value: string): HTMLElement {
  return element(tag, { class: "drawn-words" }, name, element("span", {}, value));
}

export interface DrawnItem {
  readonly name: Child;
  /** In words. */
  readonly value: string;
  /** The drawing; null where there is nothing to draw. */
  readonly drawing: SVGElement | null;
  /** What there is to say below it. */
  readonly below: readonly Child[];
}

/** An entry of such a list: its words, its drawing, and what there is to say below. */
export function drawnItem({ name, value, drawing, below }: DrawnItem): HTMLElement {
  return element("div", { class: "drawn" }, drawnWords("p", name, value), drawing, ...below);
}
