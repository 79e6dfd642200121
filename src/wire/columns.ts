/** How a column of a table is read, and what the person says of it. */

import type { NamedText } from "./named-text";

export interface ColumnGuess {
  /** From 0 at the left of the range read. */
  readonly column: number;
  readonly header: string;
  /** One of the choices; null where the column is left alone. */
  readonly readAs: string | null;
  readonly sure: "told" | "sure" | "likely" | "guessed" | "not used" | "scions";
  /** What a column that is left alone holds; null where it is blank, or was told to be left. */
  readonly holds: "day" | "count" | "text" | null;
  /** What else it might be. */
  readonly others: readonly string[];
  /** Up to three values from below the header. */
  readonly samples: readonly NamedText[];
}

export interface ColumnChoice {
  readonly header: string;
  /** Null: leave it alone. */
  readonly readAs: string | null;
}
