import { allLanguages } from "../words/all-languages";
import type { BatchFact, EventFact } from "../words/language-words";
import { normalText } from "../words/normal-text";
import { stepKey } from "../words/step-key";

/** What a column of a records table can hold. */
export type Target =
  | { readonly kind: "fact"; readonly fact: BatchFact }
  | { readonly kind: "event"; readonly fact: EventFact }
  | { readonly kind: "step"; readonly key: string; readonly what: "day" | "count" };

/** One way to understand a header. */
export interface Understanding {
  readonly target: Target;
  /** 3: the header is a known phrase. 2: known once "date", "no." and the like are set aside. */
  readonly sureness: 2 | 3;
  /** The header names a step without saying whether days or plants are meant. */
  readonly openAspect: boolean;
}

/** A target as text, equal for equal targets. */
export function targetKey(target: Target): string {
  return target.kind === "step"
    ? `step ${target.key} ${target.what}`
    : `${target.kind} ${target.fact}`;
}

/** Understands the headers of records tables. */
export interface HeaderWords {
  /** Every way to understand a header, surest first; empty when it is not known. */
  understand(header: string): readonly Understanding[];
}

interface Phrase {
  readonly target: Target;
  readonly openAspect: boolean;
}

/**
 * The words for a records table: every language's, and the names of a timetable's own steps.
 *
 * @param stepNames names of the steps that the timetable has
 */
export function headerWords(stepNames: readonly string[]): HeaderWords {
  const phrases = new Map<string, Phrase[]>();
  const add = (word: string, target: Target, openAspect = false) => {
    const known = phrases.get(word) ?? [];
    if (known.some((one) => targetKey(one.target) === targetKey(target))) return;
    phrases.set(word, [...known, { target, openAspect }]);
  };
  const addStep = (word: string, key: string, what: "day" | "count" | "open") => {
    if (what === "open") {
      add(word, { kind: "step", key, what: "day" }, true);
      add(word, { kind: "step", key, what: "count" }, true);
    } else add(word, { kind: "step", key, what });
  };
  for (const words of allLanguages) {
    for (const [key, step] of Object.entries(words.steps)) {
      for (const word of step.day) addStep(word, key, "day");
      for (const word of step.count) addStep(word, key, "count");
    }
    for (const [fact, list] of Object.entries(words.facts)) {
      for (const word of list) add(word, factTarget(fact as BatchFact | EventFact));
    }
    for (const [key, step] of Object.entries(words.steps)) {
      for (const word of [key, ...step.name]) addStep(word, key, "open");
    }
  }
  for (const name of stepNames) addStep(normalText(name), stepKey(name), "open");
  return { understand: (header) => understand(normalText(header), phrases) };
}

const DAY_WORDS = wordSet((words) => words.dayWords);
const COUNT_WORDS = wordSet((words) => words.countWords);
const FILLERS = wordSet((words) => words.headerFillers);

function understand(
  header: string,
  phrases: ReadonlyMap<string, readonly Phrase[]>,
): readonly Understanding[] {
  if (header === "") return [];
  const whole = phrases.get(header);
  if (whole !== undefined) return whole.map((phrase) => ({ ...phrase, sureness: 3 }));
  const words = header.split(" ");
  const saysDay = words.some((word) => DAY_WORDS.has(word));
  const saysCount = words.some((word) => COUNT_WORDS.has(word));
  const core = words
    .filter((word) => !DAY_WORDS.has(word) && !COUNT_WORDS.has(word) && !FILLERS.has(word))
    .join(" ");
  return (phrases.get(core) ?? [])
    .filter(({ target, openAspect }) => {
      if (target.kind !== "step") return true;
      if (saysDay === saysCount) return true;
      return openAspect
        ? target.what === (saysDay ? "day" : "count")
        : (target.what === "day") === saysDay;
    })
    .map((phrase) => ({
      target: phrase.target,
      openAspect: phrase.openAspect && saysDay === saysCount,
      sureness: 2,
    }));
}

function wordSet(
  pick: (words: (typeof allLanguages)[number]) => readonly string[],
): ReadonlySet<string> {
  return new Set(allLanguages.flatMap(pick));
}

function factTarget(fact: BatchFact | EventFact): Target {
  return fact.startsWith("event")
    ? { kind: "event", fact: fact as EventFact }
    : { kind: "fact", fact: fact as BatchFact };
}
