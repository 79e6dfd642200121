import { readFileSync } from "node:fs";

/** What code that a package took over from elsewhere asks to be kept with it. */
export interface SourceNotice {
  readonly copyrights: readonly string[];
  /** The terms below them, in one line. */
  readonly terms: string;
}

/**
 * Notices of authors before those of a package, as its files quote them: a block of text in a
 * comment, copyright lines first. Equal terms are given once, with all their copyright lines.
 */
export function sourceNotices(files: readonly string[]): readonly SourceNotice[] {
  const byTerms = new Map<string, Set<string>>();
  for (const file of files) {
    for (const block of quotedBlocks(readFileSync(file, "utf8"))) {
      const lines = block.split("\n").map((line) => line.replace(/^\s*\*?\s*/, "").trim());
      const copyrights = lines.filter(isCopyright);
      if (copyrights.length === 0) continue;
      const terms = lines.filter((line) => line !== "" && !isCopyright(line)).join(" ");
      const known = byTerms.get(terms) ?? new Set();
      for (const line of copyrights) known.add(line.replace(/^\(C\) (?=Copyright)/i, ""));
      byTerms.set(terms, known);
    }
  }
  return [...byTerms].map(([terms, copyrights]) => ({ copyrights: [...copyrights].sort(), terms }));
}

function isCopyright(line: string): boolean {
  return /^(\(c\)|copyright)\s/i.test(line);
}

function quotedBlocks(code: string): string[] {
  return [...code.matchAll(/\/\*[\s\S]*?\*\//g)].flatMap(([comment]) =>
    [...comment.matchAll(/```text([\s\S]*?)(?:```|\*\/)/g)].map(([, block]) => block ?? ""),
  );
}
