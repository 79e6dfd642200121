import { type Cell, cellText } from "../cells";
import { lazily } from "../lazily";
import type { ToldWords } from "../records";
import { batchMethods, methodWords, type Timetable } from "../timetable";
import { normalText, stepKey, withoutAccents, wordPattern, wordSet } from "../words";
import { jobKind } from "./crew";

export interface SkillsRead {
  /** Kinds of work, see crew.ts; null for all. */
  readonly skills: ReadonlySet<string> | null;
  /** Pieces that name no step and no method. */
  readonly unknown: readonly string[];
}

export interface Jobs {
  readonly stepKeys: ReadonlySet<string>;
  /** Null where methods are not told apart. */
  readonly timetable: Timetable | null;
  /** What was told of words in cells. */
  readonly words?: ToldWords | undefined;
}

/** A step, or all, of some methods, or of all. */
interface Skill {
  readonly step: string | null;
  readonly methods: readonly string[] | null;
}

type MayGraft = (method: string) => boolean;

const GRAFTING = "grafting";
const EVERYTHING = wordSet((words) => words.everything);
/** Between two steps: "Sowing and grafting", "Sowing/grafting". */
const and = lazily(
  () => new RegExp(`[/+&]|(?<!\\p{L})(?:${wordPattern((words) => words.and)})(?!\\p{L})`, "iu"),
);
/** "Everything except", "not". */
const except = lazily(() => {
  const everything = wordPattern((words) => words.everything);
  const words = wordPattern(({ workDays }) => workDays.except);
  return new RegExp(`^(?:(?:${everything})\\s+)?(?:${words})\\s+`, "i");
});
/** "Grafting: mango", "grafting (mango": what follows is of the same step. */
const GOES_ON = /[:(][^)]*$/;

/**
 * A reader of the tasks that persons may do: steps, or steps of some methods, or all but some.
 * Longer than most: its parts read with the same steps, methods and names.
 */
export function skillReader({ stepKeys, timetable, words: told }: Jobs) {
  const nameOf = (word: string) => told?.nameOf(word) ?? word;
  const readMethod = timetable === null ? null : batchMethods(timetable);
  const methodsOf = new Map<string, Set<string>>();
  for (const { name, steps } of timetable?.methods ?? []) {
    for (const { key } of steps) methodsOf.set(key, (methodsOf.get(key) ?? new Set()).add(name));
  }

  const methodsIn = (text: string): readonly string[] => {
    if (normalText(text) === "") return [];
    const method = told?.methodOf({ method: text, crop: "" }).method ?? text;
    const reading = readMethod?.({ method: nameOf(method) });
    if (reading?.code === "method") return [reading.method.name];
    return reading?.code === "several-methods" ? reading.methods.map(({ name }) => name) : [];
  };
  const stepIn = (text: string): string | null => {
    const key = stepKey(nameOf(text));
    return stepKeys.has(key) ? key : null;
  };
  /** A step by its name, or among words that say of which methods; or methods alone. */
  const skillIn = (piece: string, lastStep: string | null): Skill | null => {
    const whole = stepIn(piece);
    if (whole !== null) return { step: whole, methods: null };
    const own = methodsIn(piece);
    const words = normalText(piece).split(" ");
    for (let length = words.length - 1; length > 0; length -= 1) {
      for (let at = 0; at + length <= words.length; at += 1) {
        const step = stepIn(words.slice(at, at + length).join(" "));
        if (step === null) continue;
        const rest = methodsIn([...words.slice(0, at), ...words.slice(at + length)].join(" "));
        const methods = own.length > 0 ? own : rest;
        if (methods.length > 0) return { step, methods };
      }
    }
    if (own.length === 0) return null;
    const { ways, isBudding, isAtTop } = methodWords(piece);
    // "Mango" is all that is done with mangoes, "mango cleft" is grafting them.
    const isGraft = ways.length > 0 || isBudding || isAtTop;
    return {
      step: lastStep ?? (isGraft && stepKeys.has(GRAFTING) ? GRAFTING : null),
      methods: own,
    };
  };

  /**
   * Steps of which a piece says the longest word, of one or of many: "Release" is the first and the second,
   * "first" is neither.
   */
  const stepsSaying = (piece: string): readonly Skill[] => {
    const words = stepKey(nameOf(piece)).split(" ");
    const isSaid = (step: string) => {
      const own = step.split(" ");
      const longest = own.reduce((best, word) => (word.length >= best.length ? word : best), "");
      const isWord = (said: string, word: string) => said === word || said === `${word}s`;
      return (
        words.some((said) => isWord(said, longest)) &&
        words.every((said) => own.some((word) => isWord(said, word)))
      );
    };
    return [...stepKeys].filter(isSaid).map((step) => ({ step, methods: null }));
  };

  /** Which methods somebody may graft; null for all. Who is named none that is known may graft none. */
  const graftsIn = (cells: readonly Cell[], unknown: string[]): MayGraft | null => {
    if (readMethod === null || cells.length === 0) return null;
    const can = new Set<string>();
    const cannot = new Set<string>();
    let isAll = true;
    for (const sentence of cells.flatMap((cell) => nameOf(textOf(cell)).split(/[;\r\n]/))) {
      let isExcept = false;
      for (const part of sentence.split(",").flatMap(partsOf)) {
        const piece = withoutAccents(part).replace(except(), "");
        isExcept ||= piece !== withoutAccents(part);
        if (EVERYTHING.has(normalText(piece))) continue;
        isAll &&= isExcept;
        const methods = methodsIn(piece);
        if (methods.length === 0) unknown.push(part);
        for (const method of methods) (isExcept ? cannot : can).add(method);
      }
    }
    return (method) => (isAll || can.has(method)) && !cannot.has(method);
  };

  /**
   * @param tasks   what somebody does
   * @param methods which methods, or those of which crops, somebody may graft
   */
  return (tasks: readonly Cell[], methods: readonly Cell[] = []): SkillsRead => {
    const can: Skill[] = [];
    const cannot: Skill[] = [];
    const unknown: string[] = [];
    let isAll = true;
    for (const sentence of tasks.flatMap((cell) => nameOf(textOf(cell)).split(/[;\r\n]/))) {
      let isExcept = false;
      let lastStep: string | null = null;
      // What has no name as a whole is taken apart at "/", "+" and "and".
      for (const part of sentence
        .split(",")
        .flatMap((one) => (stepIn(one) ? [cellText(one)] : partsOf(one)))) {
        const piece = withoutAccents(part).replace(except(), "");
        isExcept ||= piece !== withoutAccents(part);
        if (EVERYTHING.has(normalText(piece))) continue;
        isAll &&= isExcept;
        const skill: Skill | null = skillIn(piece, lastStep);
        if (GOES_ON.test(piece)) lastStep = skill?.step ?? null;
        const skills = skill === null ? stepsSaying(piece) : [skill];
        if (skills.length === 0) unknown.push(part);
        (isExcept ? cannot : can).push(...skills);
      }
    }
    const mayGraft = graftsIn(methods, unknown);
    const isOpen = (step: string) => (method: string | null) => {
      if (step === GRAFTING && method !== null && mayGraft?.(method) === false) return false;
      const holds = (skill: Skill) =>
        (skill.step === null || skill.step === step) &&
        (skill.methods?.some((one) => one === method) ?? true);
      return (isAll || can.some(holds)) && !cannot.some(holds);
    };
    const kinds = [...stepKeys].flatMap((step) => {
      const own = [...(methodsOf.get(step) ?? [])];
      const open = own.filter(isOpen(step));
      if (own.length === 0 ? isOpen(step)(null) : open.length === own.length) return step;
      return open.map((one) => jobKind(step, one));
    });
    return {
      skills: isAll && cannot.length === 0 && mayGraft === null ? null : new Set(kinds),
      unknown,
    };
  };
}

function textOf(cell: Cell): string {
  return typeof cell === "string" ? cell.trim() : cellText(cell);
}

function partsOf(text: string): readonly string[] {
  return text
    .split(and())
    .map(cellText)
    .filter((part) => part !== "");
}
