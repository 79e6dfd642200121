import { lazily } from "../lazily";
import { type HeaderPart, normalText, wordSet } from "../words";
import { type HeaderParts, headerParts } from "./header-parts";
import { headerWords } from "./header-words";
import type { LogEvent } from "./read-log";

/**
 * What a cell of a log says was done, by its single words, as a header is read by them: "Tape loosened",
 * "pricked out", "thrown away". Null where they tell nothing for sure.
 *
 * @param stepNames names of the timetable's steps
 */
export function doneByParts(
  stepNames: readonly string[],
): (text: string) => LogEvent["what"] | null {
  const words = lazily(() => headerWords(stepNames));
  return (text) => {
    const parts = words().byParts(text);
    if (parts?.target == null || !parts.sure || isOpen(headerParts(text))) return null;
    if (normalText(text).split(" ").some(NOT.has)) return null;
    const { target } = parts;
    if (target.kind === "step") return { kind: "step", key: target.key };
    const fact = target.kind === "fact" ? target.fact : null;
    return fact === "culled" || fact === "dispatched" ? { kind: fact } : null;
  };
}

const NOT_PLAIN = wordSet((words) => words.notPlain);

/** Whether a word names one step alone: a step of the timetable's own does, whatever else it might mean. */
export function plainStep(stepNames: readonly string[]): (text: string) => boolean {
  const own = lazily(() => new Set(stepNames.map(normalText)));
  return (text) => {
    const word = normalText(text);
    return !NOT_PLAIN.has(word) || own().has(word);
  };
}

/** What begins, where nothing but these is said, may be anything. */
const BEGUN: ReadonlySet<HeaderPart> = new Set<HeaderPart>(["begin", "aside"]);

/** Words that turn a step round: "not ready". */
const NOT = wordSet((words) => words.workDays.except);

/**
 * What a header's place and cells make plain and a cell alone does not: the living are counted more than
 * once, a "graft count" is of those made or taken, "sowing & potting" are two.
 */
function isOpen({ says, aspect, isTwo }: HeaderParts): boolean {
  const isCounted = aspect === "count" || says.has("check");
  // Planted is sown, or put into a bag.
  if (says.has("planted") && !says.has("seed") && !says.has("pot")) return true;
  if (isTwo || (says.has("alive") && !says.has("take") && !says.has("graft"))) return true;
  // "Départ" of the plants is no sowing.
  if (says.has("begin") && [...says].every((part) => BEGUN.has(part))) return true;
  const isMade = says.has("graft") || (says.has("burst") && !says.has("bud"));
  return isCounted && isMade && !says.has("take") && !says.has("alive");
}
