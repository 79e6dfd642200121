import { foldName } from "../names";

/** What stands between two people in one cell. */
const BETWEEN = /(\s*[,;/&+|]\s*)/;

/** Calls people by their initials, each still told from all others. */
export type Initials = (text: string) => string;

/**
 * People by their initials. Whoever comes first keeps the plain ones, a second "K." is "K. 2": so
 * that initials stay the same when somebody is added, those who came last must stand last.
 *
 * A name is the same person however it is spelt (names/fold-name.ts). Whole numbers stay, since they name nobody:
 * "Hand 12" is "H. 12". Of several people in one text each is called so; blank text stays blank.
 *
 * @param names in a lasting order; whoever is not among them comes after them, as they are asked for
 * @example initialsOf(["Kesto", "Ana Paula", "Kay"])("Kay & Ana Paula") // "K. 2 & A. P."
 */
export function initialsOf(names: readonly string[]): Initials {
  const known = new Map<string, string>();
  const taken = new Set<string>();
  const ofOne = (name: string): string => {
    if (name.trim() === "") return name;
    const key = foldName(name) || name;
    let initials = known.get(key);
    if (initials === undefined) {
      const plain = firstLetters(name.trim());
      initials = plain;
      for (let number = 2; taken.has(initials); number += 1) initials = `${plain} ${number}`;
      known.set(key, initials);
      taken.add(initials);
    }
    return initials;
  };
  const ofText = (text: string) =>
    // What stands between the people stands at the odd indexes.
    text
      .split(BETWEEN)
      .map((part, index) => (index % 2 === 0 ? ofOne(part) : part))
      .join("");
  for (const name of names) ofText(name);
  return ofText;
}

function firstLetters(name: string): string {
  const words = name.match(/\p{N}+|\p{L}[\p{L}\p{M}\p{N}]*/gu) ?? [];
  const letters = words.map((word) =>
    /^\p{N}/u.test(word) ? word : `${([...word][0] as string).toUpperCase()}.`,
  );
  return letters.length === 0 ? "?" : letters.join(" ");
}
