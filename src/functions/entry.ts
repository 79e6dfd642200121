import type { Parameters, SheetFunction } from "./function-of";

/** A message without facts, not yet said: what is not asked for stays out of a bundle. */
export type Message = string | (() => string);

export interface Said<Text> {
  /** One sentence for the formula helper. */
  readonly sentence: Text;
  /** What comes back, for the reference. */
  readonly answers: Text;
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
 * Plain data, so that the built file can leave it out. Each parameter that the function declares has
 * its sentence here, and no other.
 */
export interface FunctionHelp<Declared extends Parameters = Parameters> extends Said<Message> {
  readonly parameters: { readonly [Name in keyof Declared]: Message };
}

/** The help that fits a function. */
export type HelpOf<Run> =
  Run extends SheetFunction<infer Declared> ? FunctionHelp<Declared> : never;
