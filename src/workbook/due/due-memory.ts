/** What a row of the due tab keeps for itself, in a cell of its own. */
export interface DueMemory {
  /** Writes of the log that the row made and that stand, the oldest first. */
  readonly writes: readonly string[];
  /** Stands for the question that the row asks; '' for none. */
  readonly asked: string;
}

const ASKED = "?";

export function readMemory(cell: unknown): DueMemory {
  const words = String(cell ?? "")
    .split(" ")
    .filter((word) => word !== "");
  return {
    writes: words.filter((word) => !word.startsWith(ASKED)),
    asked: words.find((word) => word.startsWith(ASKED))?.slice(ASKED.length) ?? "",
  };
}

export function memoryText({ writes, asked }: DueMemory): string {
  return [...writes, ...(asked === "" ? [] : [`${ASKED}${asked}`])].join(" ");
}

/**
 * A short text that stands for questions: a *Yes* answers those that the row shows, and no others
 * that have come up since.
 */
export function markOf(questions: readonly string[]): string {
  let hash = 0x811c9dc5;
  for (const letter of questions.join("\n")) {
    // FNV-1a, 32 bits, by code points.
    hash = Math.imul(hash ^ (letter.codePointAt(0) ?? 0), 0x01000193) >>> 0;
  }
  return hash.toString(36);
}
