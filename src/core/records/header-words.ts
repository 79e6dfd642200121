import { lazily } from "../lazily";
import { madeOnce } from "../made-once";
import {
  type BatchFact,
  type EventFact,
  everyLanguage,
  everyWord,
  normalText,
  stepKey,
  wordSet,
} from "../words";
import {
  type ByParts,
  type ColumnTarget,
  type HeaderWords,
  targetKey,
  type Understanding,
} from "./column-target";
import { headerParts } from "./header-parts";
import { partsMeaning, type StepConcept } from "./parts-meaning";
import { isLeaveAlone } from "./target-names";

interface Phrase {
  readonly target: ColumnTarget;
  readonly openAspect: boolean;
}

/** What a word or a phrase may mean; empty when it is not known. */
type PhrasesOf = (word: string) => readonly Phrase[];

/** As targetKey tells them apart, without making keys: it is asked for every word of every language. */
function isSame(one: ColumnTarget, other: ColumnTarget): boolean {
  if (one.kind === "step") {
    return other.kind === "step" && one.key === other.key && one.what === other.what;
  }
  return one.kind === other.kind && one.fact === other.fact;
}

/** A list of phrases to add to; a word that means the same twice means it once. */
function phraseList() {
  const phrases = new Map<string, Phrase[]>();
  const add = (word: string, target: ColumnTarget, openAspect = false) => {
    const known = madeOnce(phrases, word, () => []);
    if (!known.some((one) => isSame(one.target, target))) known.push({ target, openAspect });
  };
  const addStep = (word: string, key: string, what: "day" | "count" | "open") => {
    if (what === "open") {
      add(word, { kind: "step", key, what: "day" }, true);
      add(word, { kind: "step", key, what: "count" }, true);
    } else add(word, { kind: "step", key, what });
  };
  const of: PhrasesOf = (word) => phrases.get(word) ?? [];
  return { add, addStep, of };
}

/** The phrases of every language: some two thousand, so that a run of the script makes them once. */
const languagePhrases = lazily((): PhrasesOf => {
  const { add, addStep, of } = phraseList();
  for (const words of everyLanguage()) {
    for (const [key, step] of Object.entries(words.steps)) {
      for (const word of step.day) addStep(word, key, "day");
      for (const word of step.count) addStep(word, key, "count");
    }
    for (const [fact, list] of Object.entries(words.facts)) {
      for (const word of list) add(word, factTarget(fact as BatchFact | EventFact));
    }
    for (const [key, step] of Object.entries(words.steps)) {
      const names = step.name.filter((word) => !words.notPlain.includes(word));
      for (const word of [key, ...names]) addStep(word, key, "open");
    }
  }
  return of;
});

/**
 * The words for a records table: every language's, and the names of a timetable's own steps.
 *
 * @param stepNames names of the steps that the timetable has
 * @param told      what a person has said of headers: our column name by the header in the sheet
 */
export function headerWords(
  stepNames: readonly string[],
  told: ReadonlyMap<string, string> = new Map(),
): HeaderWords {
  const own = phraseList();
  for (const name of stepNames) own.addStep(normalText(name), stepKey(name), "open");
  const phrases: PhrasesOf = (word) => {
    const known = languagePhrases()(word);
    const more = own
      .of(word)
      .filter(({ target }) => !known.some((one) => isSame(one.target, target)));
    return more.length === 0 ? known : [...known, ...more];
  };
  const understood = new Map<string, readonly Understanding[]>();
  for (const [header, name] of told) {
    const best = isLeaveAlone(name) ? undefined : understand(normalText(name), phrases)[0];
    const ways = best === undefined ? [] : [{ ...best, openAspect: false, sureness: 3 as const }];
    understood.set(header.replace(/\s+/g, " ").trim(), ways);
  }
  const ownSteps = lazily(
    () =>
      new Map(
        stepNames.flatMap((name) => {
          const parts = headerParts(name);
          const meaning = partsMeaning(parts);
          if (meaning?.kind !== "step") return [];
          const concept = parts.turn === null ? meaning.key : inTurn(meaning.key);
          return [[concept, stepKey(name)] as const];
        }),
      ),
  );
  const inParts = new Map<string, ByParts | null>();
  return {
    stepKeys: [...new Set(stepNames.map(stepKey))],
    byParts: (header) =>
      madeOnce(inParts, header, () => (header.length > LONGEST ? null : byParts(header, ownSteps))),
    understand: (header) =>
      madeOnce(understood, header, () =>
        header.length > LONGEST ? [] : understand(normalText(withoutDayForm(header)), phrases),
      ),
  };
}

/** Where a step stands that a timetable numbers: "Tape off" need not be its "Second release". */
const inTurn = (key: StepConcept) => `${key} in turn`;

/** The steps of partsMeaning that every timetable may have columns for, and at which of them plants are counted. */
const USUAL_STEPS: Readonly<Partial<Record<StepConcept, "counted" | "day alone">>> = {
  sowing: "counted",
  germination: "counted",
  grafting: "counted",
  "first release": "day alone",
  "bud break": "counted",
  "take count": "counted",
  "first flush": "day alone",
  "flush hardening": "day alone",
  "union closed": "day alone",
  ready: "counted",
};

function byParts(header: string, ownSteps: () => ReadonlyMap<string, string>): ByParts | null {
  const parts = headerParts(withoutDayForm(header));
  const meaning = partsMeaning(parts);
  if (meaning === null) return null;
  const { aspect } = parts;
  const isScionsCut = meaning.kind === "scions cut";
  const reading = {
    aspect,
    isScionsCut,
    isCounted: true,
    sure: false,
    likely: false,
    afterDays: parts.afterDays ?? 0,
  };
  if (meaning.kind === "fact") {
    return { ...reading, target: { kind: "fact", fact: meaning.fact }, sure: meaning.sure };
  }
  if (meaning.kind !== "step") return { ...reading, target: null };
  const { key, usual, sure, likely } = meaning;
  const usualStep = USUAL_STEPS[key];
  const { turn } = parts;
  const ownStep = () =>
    ownSteps().get(key) ?? (turn === null ? undefined : ownSteps().get(inTurn(key)));
  const own = usualStep === undefined ? ownStep() : key;
  if (own !== undefined) {
    const isCounted = usualStep !== "day alone";
    return { ...reading, target: { kind: "step", key: own, what: usual }, isCounted, sure, likely };
  }
  // A wrap that came off was released, if that is not what its first opening is called here.
  if (key !== "wrap off") return { ...reading, target: null };
  const target = { kind: "step", key: "first release", what: "day" } as const;
  return { ...reading, target, isCounted: false };
}

/** "(dd/mm/yyyy)", "[jj-mm-aaaa]": how the days of a column are written, which says that they are days. */
const dayForm = lazily(() => {
  const letters = `[${everyWord((words) => words.dayLetters).join("")}]{1,4}`;
  return new RegExp(`[([]?\\b(${letters})([/.-])(${letters})\\2(${letters})\\b[)\\]]?`, "i");
});

function withoutDayForm(header: string): string {
  return header.replace(dayForm(), " date ");
}

/** No header is longer; a note may be. */
const LONGEST = 80;

const DAY_WORDS = wordSet((words) => words.dayWords);
const COUNT_WORDS = wordSet((words) => words.countWords);
const FILLERS = wordSet((words) => [...words.headerFillers, ...words.headerVerbs]);

function understand(header: string, phrases: PhrasesOf): readonly Understanding[] {
  if (header === "") return [];
  const whole = phrases(header);
  if (whole.length > 0) return whole.map((phrase) => ({ ...phrase, sureness: 3 }));
  const words = header.split(" ");
  for (const { core, rest } of cores(words)) {
    const known = phrases(core.join(" "));
    if (known.length === 0) continue;
    const day = rest.some((word) => DAY_WORDS.has(word));
    const count = rest.some((word) => COUNT_WORDS.has(word));
    // "Takes date" is the day of the take count, though "Takes" alone is its plants.
    const says = day === count ? null : day ? "day" : "count";
    const ways = new Map<string, Understanding>();
    for (const { target, openAspect } of known) {
      const told: ColumnTarget =
        target.kind === "step" && says !== null ? { ...target, what: says } : target;
      const key = targetKey(told);
      if (!ways.has(key)) {
        ways.set(key, { target: told, openAspect: openAspect && says === null, sureness: 2 });
      }
    }
    return [...ways.values()];
  }
  return [];
}

/**
 * What may be the name in a header once "date", "no." and the like are set aside: first what stands
 * between those at its ends, the longest first, since a name may hold such a word itself
 * ("Survival count no."); then what is left without any of them.
 */
function* cores(
  words: readonly string[],
): Iterable<{ readonly core: readonly string[]; readonly rest: readonly string[] }> {
  const isAside = (word: string) =>
    DAY_WORDS.has(word) || COUNT_WORDS.has(word) || FILLERS.has(word);
  let most = 0;
  while (most < words.length && isAside(words[most] as string)) most += 1;
  // Where every word is such a word, the name may be any of them.
  let least = most === words.length ? 0 : words.length;
  while (least > most && isAside(words[least - 1] as string)) least -= 1;
  for (let length = words.length - 1; length >= 1; length -= 1) {
    for (let first = 0; first + length <= words.length; first += 1) {
      if (first > most || first + length < least) continue;
      const end = first + length;
      yield {
        core: words.slice(first, end),
        rest: [...words.slice(0, first), ...words.slice(end)],
      };
    }
  }
  yield { core: words.filter((word) => !isAside(word)), rest: words.filter(isAside) };
}

function factTarget(fact: BatchFact | EventFact): ColumnTarget {
  return fact.startsWith("event")
    ? { kind: "event", fact: fact as EventFact }
    : { kind: "fact", fact: fact as BatchFact };
}
