import type { Outcome } from "./outcome";

/** What the product made of a word in a cell. */
export interface WordRead {
  /** As the corpus calls it; "" where it was read as nothing. */
  readonly as: string;
  readonly outcome: Outcome;
}

/**
 * What became of a word that stands for one thing or for none.
 *
 * @param read   what it was read as; null where it is named as not known, or asked about
 * @param wanted what it may be read as; none where it means nothing that the product knows
 */
export function wordOutcome(
  read: string | null,
  { must, wanted }: { readonly must: string; readonly wanted: readonly string[] },
): Outcome {
  if (must === "ask") return read === null ? "right" : "wrong";
  if (read === null) return wanted.length === 0 ? "right" : "asked";
  return wanted.includes(read) ? "right" : "wrong";
}
