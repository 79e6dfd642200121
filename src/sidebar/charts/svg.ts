const SVG = "http://www.w3.org/2000/svg";

/** A new element of a drawing with its attributes and parts. */
export function svg(
  tag: string,
  attributes: Readonly<Record<string, string>>,
  ...children: readonly SVGElement[]
): SVGElement {
  const made = document.createElementNS(SVG, tag) as SVGElement;
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, value);
  made.append(...children);
  return made;
}

/**
 * A whole drawing of a kind that the styles know.
 *
 * @param label the same in words, for those who listen; null where the words stand beside it
 */
export function drawing(
  kind: string,
  label: string | null,
  marks: readonly SVGElement[],
): SVGElement {
  const heard: Readonly<Record<string, string>> =
    label === null ? { "aria-hidden": "true" } : { role: "img", "aria-label": label };
  return svg("svg", { class: kind, ...heard }, ...marks);
}

/** A line from top to bottom of a place. @param y where it begins and ends, as "22%" */
export function upright(kind: string, x: string, [y1, y2]: readonly [string, string]): SVGElement {
  return svg("line", { class: kind, x1: x, x2: x, y1, y2 });
}

/** A line from edge to edge. */
export function level(kind: string, y: string): SVGElement {
  return svg("line", { class: kind, x1: "0%", x2: "100%", y1: y, y2: y });
}
