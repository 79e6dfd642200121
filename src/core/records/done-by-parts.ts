import { lazily } from "../lazily";
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
    if (parts?.target == null || !parts.sure) return null;
    const { target } = parts;
    if (target.kind === "step") return { kind: "step", key: target.key };
    const fact = target.kind === "fact" ? target.fact : null;
    return fact === "culled" || fact === "dispatched" ? { kind: fact } : null;
  };
}
