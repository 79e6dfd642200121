import { normalText } from "../words";

/** A gap between a letter and a digit; one between two digits tells names apart. */
const GAP = /(?<=\p{L}) (?=\p{N})|(?<=\p{N}) (?=\p{L})/gu;

/** "1/2" may be both of them, "1.2" a place of its own, and "1-2" is one. */
const STROKE = /(?<=\p{N})(?:\s*\/\s*|[.,:])(?=\p{N})/gu;
/** "Amel 3?" is doubted by whoever wrote it, "Amel 3*" explained elsewhere. */
const DOUBT = /(?<=[\p{L}\p{N}])\s*[?*]/gu;

/** Longer texts are remarks, and no names of one another (our choice): to compare them takes minutes. */
export const LONGEST_NAME = 100;

/**
 * A name made comparable, as a person compares: capitals, accents, full-width forms, outer blanks and
 * points aside, and gaps or hyphens between a letter and a digit. A plus sign stays, since it names, and
 * so do a stroke between two digits and a question mark behind.
 *
 * @example foldName("DR-12 ") === foldName("dr12") // true
 * @example foldName("1-1") === foldName("11") // false
 */
export function foldName(name: string): string {
  return normalText(
    name.replace(/\+/g, " plus ").replace(STROKE, " stroke ").replace(DOUBT, " doubt"),
  ).replace(GAP, "");
}
