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
  return name.replace(/\p{L}+/gu, "a").replace(/\p{N}+/gu, "9");
}
