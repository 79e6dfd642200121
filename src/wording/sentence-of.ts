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
export type SentencesOf<Any extends Coded, Words = string> = {
  readonly [Code in Any["code"]]: (said: CodedAs<Any, Code>, where: Where) => Words;
};

/** That of the union which may have a code. */
type CodedAs<Any extends Coded, Code> = Any extends { readonly code: infer Own }
  ? Code extends Own
    ? Any
    : never
  : never;

/** The sentence of one code with its facts. */
export function sentenceOf<Any extends Coded, Words = string>(
  sentences: SentencesOf<Any, Words>,
  said: Any,
  where: Where = "cell",
): Words {
  const say = sentences[said.code as Any["code"]] as (said: Any, where: Where) => Words;
  return say(said, where);
}

/** Whole sentences after one another; null where there are none. */
export function together(sentences: readonly string[]): string | null {
  return sentences.length === 0 ? null : sentences.join(" ");
}
