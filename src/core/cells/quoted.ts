/** Characters of somebody's text that a sentence repeats at most: a line. */
const LONGEST = 60;

/**
 * A text of somebody else's on one line, as a sentence may repeat it: shortened with "…" where it is
 * longer than a line.
 */
export function shortened(text: string): string {
  // Cut first: white space in a text of any length would be walked through for nothing.
  const line = text
    .slice(0, 4 * LONGEST)
    .replace(/\s+/g, " ")
    .trim();
  if (line.length <= LONGEST && text.length <= 4 * LONGEST) return line;
  // Half of a letter that takes two places would show as a box.
  return `${line.slice(0, LONGEST - 1).replace(/[\ud800-\udbff]$/, "")}…`;
}

/** The same in quotation marks. */
export function quoted(text: string): string {
  return `"${shortened(text)}"`;
}

/** So many names are as good as all of them to somebody who looks for the right one. */
const MOST_NAMES = 30;

/** Names to choose from, in their order, as a sentence may repeat them. */
export function nameList(names: readonly string[]): string {
  const more = names.length > MOST_NAMES ? ` and ${names.length - MOST_NAMES} more` : "";
  return names.slice(0, MOST_NAMES).map(shortened).join(", ") + more;
}

/** The facts of a code as a sentence may repeat them: each text shortened to a line. */
export function shortFacts<Facts extends object>(facts: Facts): Facts {
  const short = Object.entries(facts).map(([name, fact]) => [
    name,
    typeof fact === "string" ? shortened(fact) : fact,
  ]);
  return Object.fromEntries(short) as Facts;
}
