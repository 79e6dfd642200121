/**
 * What undoes phrase-codes.ts; it goes into the built file.
 * @param phrases the phrase of each code, in the codes' order
 */
export function spellOut(text: string, phrases: readonly string[]): string {
  return text.replace(/[ƀ-ʯ]/g, (code) => phrases[code.charCodeAt(0) - 0x180] as string);
}
