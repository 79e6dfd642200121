import { errorSentence } from "../../wording/errors";
import type { Where } from "../../wording/sentence-of";
import { faultSentence } from "../../wording/writing";
import type { WritingFault } from "../../wording/writing-codes";

/**
 * Why something could not be written or made, as a code with its facts. People are told by
 * troubleSentence, never by the message, which is for those who read logs.
 */
export class WritingError extends Error {
  readonly fault: WritingFault;

  constructor(fault: WritingFault) {
    super(JSON.stringify(fault));
    this.name = "WritingError";
    this.fault = fault;
  }
}

/** What went wrong, whatever was thrown. */
export function writingFault(error: unknown, where: Where = "cell"): WritingFault {
  if (error instanceof WritingError) return error.fault;
  return { code: "said", sentence: errorSentence(error, where) };
}

/** The same as a person is told, in a cell or by the spreadsheet's own box. */
export function troubleSentence(error: unknown): string {
  return faultSentence(writingFault(error));
}
