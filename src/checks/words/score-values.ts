import { type Part, type ValueLine, valueLines } from "./corpus";
import { readMethod } from "./method-words";
import { readName } from "./name-words";
import type { Scored } from "./outcome";
import { readStep } from "./step-words";
import type { WordRead } from "./word-outcome";

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
