export interface RemarkParts {
  /** Sentences that ask for care. */
  readonly warnings: readonly string[];
  /** Sentences that only say how a number came about. */
  readonly facts: readonly string[];
}

/** How sentences begin that only explain; whatever else is said is shown at once. */
const FACT = /^(?:Plain division|Both together)\b/;

/** A step's remark by sentences, so that a warning does not hide behind an explanation. */
export function remarkParts(remark: string): RemarkParts {
  const sentences = remark === "" ? [] : remark.replace(/\.$/, "").split(/\. (?=[A-Z])/);
  const ended = sentences.map((sentence) => `${sentence}.`);
  return {
    warnings: ended.filter((sentence) => !FACT.test(sentence)),
    facts: ended.filter((sentence) => FACT.test(sentence)),
  };
}
