import { type Part, type ValueLine, valueLines } from "./corpus";
import { readMethod } from "./method-words";
import { readName } from "./name-words";
import type { Outcome, Scored } from "./outcome";
import { readStep } from "./step-words";

/** What the product made of a word in a cell. */
export interface WordRead {
  /** As the corpus calls it; "" where it was read as nothing. */
  readonly as: string;
  readonly outcome: Outcome;
}

/** Every word of the corpus that stands in cells, read in its column. */
export function scoredValues(part: Part): readonly Scored[] {
  const lines = valueLines(part);
  const firstOf = new Map<string, string>();
  for (const { group, spelling } of lines) {
    if (!firstOf.has(group)) firstOf.set(group, spelling);
  }
  return lines.map((line) => {
    const { as, outcome } = readValue(line, firstOf.get(line.group) as string);
    const { kind, language, spelling, is, must, common, id } = line;
    const means = must === "ask" ? `${is}, to be asked` : is;
    return { kind, language, word: spelling, means, readAs: as, outcome, common, at: id };
  });
}

function readValue(line: ValueLine, first: string): WordRead {
  if (line.kind === "method") return readMethod(line);
  if (line.kind === "step") return readStep(line);
  return readName(line, first);
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
