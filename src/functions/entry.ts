import type * as shared from "../sentences/made/parameter-help";
import type { Parameters, SheetFunction } from "./function-of";

/** A message without facts, not yet said: what is not asked for stays out of a bundle. */
export type Message = string | (() => string);

export interface Said<Text> {
  /** One sentence for the formula helper. */
  readonly sentence: Text;
  /** What comes back, for the reference. */
  readonly answers: Text;
}

export interface Shown<Text> {
  /** A formula over the example workbook; the reference shows what it really gives. */
  readonly example: string;
  /**
   * The formula that README shows, on the sample nursery; where it is left out, the example on whole tabs of
   * the same names.
   */
  readonly onSample?: string;
  /** What the columns of the example hold, where the answer has no header of its own. */
  readonly exampleHeadings?: readonly Text[];
}

/**
 * Everything said of a custom function, once: the helper's text, the reference and the tests use it.
 * Plain data, so that the built file can leave it out.
 */
export interface FunctionHelp<Declared extends Parameters = Parameters> extends Shown<Message> {
  /** Its group in the file of sentences. */
  readonly says: Said<Message> & SentencesOfParameters<Declared>;
}

/** The arguments of which `parameterHelp` says what they are, for all functions. */
type Shared = Exclude<keyof typeof shared, "ifLeftOut">;

/** Under the name of each argument what to give; those of all functions where it is meant otherwise here. */
type SentencesOfParameters<Declared extends Parameters> = {
  readonly [Name in Exclude<keyof Declared, Shared>]: Message;
} & { readonly [Name in keyof Declared & Shared]?: Message };

/** The help that fits a function. */
export type HelpOf<Run> =
  Run extends SheetFunction<infer Declared> ? FunctionHelp<Declared> : never;
