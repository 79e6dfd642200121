/** What undoes pair-codes.ts and phrase-codes.ts; it goes into the built file. */
export interface Spelling {
  readonly codes: string;
  readonly pairs: string;
  /** With a sign between. */
  readonly phrases: string;
}

/** A text without its codes: phrases in one search, then pairs, the last first, since one may hold codes before its own. */
export function spellOut(text: string, { codes, pairs, phrases }: Spelling): string {
  const list = phrases.split("`");
  let spelt = text.replace(/[ƀ-ʯ]/g, (code) => list[code.charCodeAt(0) - 0x180] as string);
  for (let at = codes.length - 1; at >= 0; at -= 1) {
    spelt = spelt.split(codes[at] as string).join(pairs.slice(2 * at, 2 * at + 2));
  }
  return spelt;
}
