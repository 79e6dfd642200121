/** No word of any list is longer: of a longer one its beginning is looked at. */
const LONGEST = 64;

/** What a word stands for, else the longest beginning of it that is known, of `shortest` letters at least. */
export function longestBeginning<Meaning>(
  known: ReadonlyMap<string, Meaning>,
  word: string,
  shortest: number,
): Meaning | undefined {
  for (let length = Math.min(word.length, LONGEST); length >= shortest; length -= 1) {
    const meaning = known.get(word.slice(0, length));
    if (meaning !== undefined) return meaning;
  }
  return undefined;
}
