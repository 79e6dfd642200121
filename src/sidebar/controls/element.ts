/** Null and false leave an attribute out; true writes it empty. */
export type Attributes = Readonly<Record<string, string | number | boolean | null>>;
export type Child = Node | string | null;

/**
 * A new element with its attributes and children. Text only ever becomes text nodes: no data of a
 * workbook is read as markup.
 */
export function element<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  attributes: Attributes = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[Tag] {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value === null || value === false) continue;
    made.setAttribute(name, value === true ? "" : String(value));
  }
  made.append(...children.filter((child): child is Node | string => child !== null));
  return made;
}
