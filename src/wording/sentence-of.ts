/** What is to be said, as a code with its facts. */
interface Coded {
  readonly code: string;
}

/** Where a sentence will stand: on the page the rest is a section, in a cell it is a function. */
export type Where = "cell" | "page";

/**
 * A sentence for each code. One that is lacking, or one whose message wants other facts than the code
 * has, does not compile.
 */
export type SentencesOf<Any extends Coded> = {
  readonly [Code in Any["code"]]: (said: Extract<Any, { code: Code }>, where: Where) => string;
};

/** The sentence of one code with its facts. */
export function sentenceOf<Any extends Coded>(
  sentences: SentencesOf<Any>,
  said: Any,
  where: Where = "cell",
): string {
  const say = sentences[said.code as Any["code"]] as (said: Any, where: Where) => string;
  return say(said, where);
}

/** Whole sentences after one another; null where there are none. */
export function together(sentences: readonly string[]): string | null {
  return sentences.length === 0 ? null : sentences.join(" ");
}
