import type { CellOut, Door } from "../door/index";
import type { runs } from "./runs";

/** What a custom function is given and gives: raw values of the spreadsheet. */
export type RawArguments = readonly unknown[];
export type FunctionResult = CellOut | CellOut[][];

export type FunctionName = keyof typeof runs;

export interface ParameterEntry {
  /** As it stands in the formula helper. */
  readonly name: string;
  /** One sentence: what to give. */
  readonly sentence: string;
  readonly optional: boolean;
}

export type FunctionRun = (door: Door, args: RawArguments) => FunctionResult;

/**
 * A parameter as a function's file says it: its name, with ? after it where it may be left out, and
 * one sentence. Plain data, so that the built file can leave it out.
 */
export type ParameterHelp = readonly [name: string, sentence: string];

/** Everything said of a custom function, once: the helper's text, the reference and the tests use it. */
export interface FunctionHelp {
  readonly name: FunctionName;
  /** One sentence for the formula helper. */
  readonly sentence: string;
  readonly parameters: readonly ParameterHelp[];
  /** What comes back, for the reference. */
  readonly answers: string;
  /** A formula over the example workbook; the reference shows what it really gives. */
  readonly example: string;
  /** What the columns of the example hold, where the answer has no header of its own. */
  readonly exampleHeadings?: readonly string[];
}

export interface FunctionEntry extends Omit<FunctionHelp, "parameters"> {
  readonly parameters: readonly ParameterEntry[];
  readonly run: FunctionRun;
}
