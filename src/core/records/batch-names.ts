/**
 * A batch name made comparable: capitals, spaces and hyphens aside, and a letter O the same as a
 * zero, since people and scanners mix them up.
 *
 * @example likeName("E -O5 ") === likeName("e-05") // true
 */
export function likeName(name: string): string {
  return name
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[\s\-–_./]+/g, "")
    .replace(/(?<=\d)o|o(?=\d)/g, "0");
}

/**
 * The shape of a name: letters as "a", digits as "9", runs made one. Batches of one table are
 * mostly named alike, headings and notes are not.
 *
 * @example nameShape("T24-01") // "a9-9"
 */
export function nameShape(name: string): string {
  // Letter by letter, since tables hold names by the hundred thousand and most are plain.
  let shape = "";
  let last = "";
  for (let i = 0; i < name.length; i += 1) {
    const code = name.charCodeAt(i);
    if (code > 126) return name.replace(/\p{L}+/gu, "a").replace(/\p{N}+/gu, "9");
    const lower = code | 32;
    const mark =
      code >= 48 && code <= 57 ? "9" : lower >= 97 && lower <= 122 ? "a" : name.charAt(i);
    if (mark !== last || (mark !== "a" && mark !== "9")) shape += mark;
    last = mark;
  }
  return shape;
}
