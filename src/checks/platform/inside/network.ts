import { answerCall, type RestAnswer, type RestCall } from "../rest/answer-call";
import type { StoredBook } from "../rest/stored-book";

/**
 * Takes the place of the one module of the emulator that reaches the network: its calls are answered
 * from a workbook in memory, and there is nobody to sign in.
 */
export const Syncit = {
  fxInit(): void {},
  /** Whose account it is: an invented one. */
  fxGetAccessTokenInfo: () => ({ tokenInfo: { email: "grower@example.com" } }),
  fxSheets(call: RestCall): RestAnswer {
    if (standing === null) throw new Error("no workbook is opened yet");
    return answerCall(standing, call);
  },
};

let standing: StoredBook | null = null;

export function answerFrom(book: StoredBook): void {
  standing = book;
}
