import type { CellOut, Door } from "../door/index";

/** What a custom function is given and gives: raw values of the spreadsheet. */
export type RawArguments = readonly unknown[];
export type FunctionResult = CellOut | CellOut[][];

export interface ParameterEntry {
  /** As it stands in the formula helper. */
  readonly name: string;
  /** One sentence: what to give. */
  readonly sentence: string;
  readonly optional: boolean;
}

/** Everything said of a custom function, once: the helper's text, the reference and the tests use it. */
export interface FunctionEntry {
  readonly name: string;
  /** One sentence for the formula helper. */
  readonly sentence: string;
  readonly parameters: readonly ParameterEntry[];
  /** What comes back, for the reference. */
  readonly answers: string;
  /** A formula over the example workbook; the reference shows what it really gives. */
  readonly example: string;
  /** What the columns of the example hold, where the answer has no header of its own. */
  readonly exampleHeadings?: readonly string[];
  run(door: Door, args: RawArguments): FunctionResult;
}

export function needed(name: string, sentence: string): ParameterEntry {
  return { name, sentence, optional: false };
}

export function optional(name: string, sentence: string): ParameterEntry {
  return { name, sentence, optional: true };
}
