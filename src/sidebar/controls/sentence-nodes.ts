/** Of Unicode's private use area: in no text of ours. Source: The Unicode Standard, section 23.5. */
const FIRST_MARK = 0xe000;

/**
 * A sentence in which elements stand where its facts would.
 *
 * @param say makes the sentence of texts in place of the elements
 * @example sentenceNodes(({ tab }) => `Tab ${tab} was made.`, { tab: "Due list" }) // ["Tab ", "Due list", " was made."]
 */
export function sentenceNodes<Key extends string>(
  say: (facts: Readonly<Record<Key, string>>) => string,
  elements: Readonly<Record<Key, Node>>,
): (Node | string)[] {
  const keys = Object.keys(elements) as Key[];
  const marks = keys.map((_, index) => String.fromCharCode(FIRST_MARK + index));
  const marked = Object.fromEntries(keys.map((key, index) => [key, marks[index]]));
  const sentence = say(marked as Record<Key, string>);
  const parts = sentence.split(new RegExp(`([${marks.join("")}])`)).filter((part) => part !== "");
  return parts.map((part) => {
    const index = marks.indexOf(part);
    return index === -1 ? part : elements[keys[index] as Key];
  });
}
