/**
 * A batch name made comparable: capitals, spaces and hyphens aside, and a letter O the same as a
 * zero, since people and scanners mix them up.
 *
 * @example likeName("E -O5 ") === likeName("e-05") // true
 */
export function likeName(name: string): string {
  const plain = withoutGaps(name);
  return plain.includes("o") ? plain.replace(/(?<=\d)o|o(?=\d)/g, "0") : plain;
}

/** In small letters, without spaces, hyphens and their kin. */
function withoutGaps(name: string): string {
  // Letter by letter, since tables hold names by the ten thousand and most are plain.
  let plain = "";
  for (let i = 0; i < name.length; i += 1) {
    const code = name.charCodeAt(i);
    if (code > 126 || code < 32) {
      return name
        .normalize("NFKC")
        .toLowerCase()
        .replace(/[\s\-–_./]+/g, "");
    }
    const isGap = code === 32 || code === 95 || (code >= 45 && code <= 47);
    if (!isGap) plain += code >= 65 && code <= 90 ? String.fromCharCode(code | 32) : name.charAt(i);
  }
  return plain;
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
