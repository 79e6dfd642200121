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
