/** What the sidebar asks of words in cells, and what the person tells. */

import type { NamedText } from "./named-text";

export interface WordsAsked {
  readonly methods: readonly MethodAsked[];
  readonly pairs: readonly PairAsked[];
  /** Questions that come once these are answered. */
  readonly more: number;
  /** Every method that a word may mean. */
  readonly choices: readonly string[];
  /** Names of the columns whose cells are asked about. */
  readonly columns: readonly string[];
}

/** A word for a method of which it is not known which. */
export interface MethodAsked {
  readonly word: string;
  /** Of the choices, those that it fits. */
  readonly fits: readonly string[];
  readonly batches: number;
  readonly plants: number;
}

/** Two names of a column that may be one; the first is the rarer. */
export interface PairAsked {
  /** Our name for the column. */
  readonly column: string;
  readonly rare: NamedText;
  readonly batches: number;
  readonly common: NamedText;
  readonly others: number;
  /** What bears the names. */
  readonly of: "batches" | "orders";
}

/** What the person says of a word: our name for it, null to leave it alone, or that the two are two. */
export interface WordChoice {
  readonly word: string;
  readonly name: string | null;
  readonly notSame: boolean;
}
