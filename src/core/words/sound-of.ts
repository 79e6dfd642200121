/** Letters that are heard alike, the longer spelling first. */
const HEARD: readonly (readonly [RegExp, string])[] = [
  [/(?:ch|sh|x)/g, "x"],
  [/ph/g, "f"],
  [/g(?=[eiy])/g, "j"],
  [/(?:c(?=[eiy])|z)/g, "s"],
  [/(?:qu|ck|c|q)/g, "k"],
  [/h/g, ""],
  [/y/g, "i"],
  [/n(?=[bp])/g, "m"],
  [/(.)\1+/g, "$1"],
];

/**
 * A word as it is heard, more or less, in the languages that are read: what people write who learnt it by
 * ear. In normal form, both in and out.
 *
 * @example soundOf("enchertia") === soundOf("enxertia") // true
 */
export function soundOf(word: string): string {
  return HEARD.reduce((heard, [spelt, as]) => heard.replace(spelt, as), word);
}
