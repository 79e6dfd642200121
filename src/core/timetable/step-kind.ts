import { normalText, type StepKind, wordSet } from "../words";

export type { StepKind };

/** Steps that need a hand, though plants are counted at them. */
const COUNTED_JOBS: ReadonlySet<string> = new Set([
  "sowing",
  "cuttings set",
  "grafting",
  "potting on",
]);
/** Steps at which nothing is done but looking. */
const LOOKS: ReadonlySet<string> = new Set([
  "bud break",
  "first flush",
  "flush hardening",
  "branching",
  "union closed",
]);

/**
 * The kind of a step of which none is said. One that we don't know, and at which nothing is counted, is
 * taken to be a job: a look too many nags, a job that is forgotten harms.
 *
 * Source: common practice, no source.
 */
export function usualKind(key: string, counted: boolean): StepKind {
  if (COUNTED_JOBS.has(key)) return "job";
  if (counted) return "count";
  return LOOKS.has(key) ? "look" : "job";
}

const WORDS = {
  job: wordSet((words) => words.stepKinds.job),
  count: wordSet((words) => words.stepKinds.count),
  look: wordSet((words) => words.stepKinds.look),
};

/** The kind that a cell says, in any language; null for other words, and where it is blank. */
export function kindIn(text: string): StepKind | null {
  const word = normalText(text);
  return (["job", "count", "look"] as const).find((kind) => WORDS[kind].has(word)) ?? null;
}
