import { normalText, wordSet } from "../words";
import type { ColumnSeen } from "./column-match";
import { type ColumnTarget, targetKey } from "./column-target";
import { headerParts } from "./header-parts";
import { fitsInPlace } from "./suggest-by-place";

/** What is found out of a column by the columns beside it. */
export type Found = (column: ColumnSeen, at: number, all: readonly ColumnSeen[]) => ColumnSeen;

const isHeld = (columns: readonly ColumnSeen[], is: (target: ColumnTarget) => boolean) =>
  columns.some(({ target }) => target !== null && is(target));

const isFact = (fact: string) => (target: ColumnTarget) =>
  target.kind === "fact" && target.fact === fact;

const isStep = (key: string, what: "day" | "count") => (target: ColumnTarget) =>
  target.kind === "step" && target.key === key && target.what === what;

/** Fewer say nothing of whether names differ. */
export const FEWEST_NAMES = 3;
const NEARLY_ALL = 0.95;

/** Whether nearly every cell of a column is another, as names of batches are. */
function allDiffer({ values }: ColumnSeen): boolean {
  const { filled, different } = values();
  return filled >= FEWEST_NAMES && different() >= NEARLY_ALL * filled;
}

/** "Bag lot" names batches where nothing else does and each is another, else the lots that they came from. */
export const namedUniquely: Found = (column, _at, all) => {
  const [first] = column.others;
  if (first === undefined || !isFact("batch")(first)) return column;
  if (isHeld(all, isFact("batch"))) {
    const fromLot: ColumnTarget = { kind: "fact", fact: "fromLot" };
    const { says, unknown } = headerParts(column.header);
    const isPlain = says.has("batch") && says.has("seed") && unknown === 0;
    return isPlain && !isHeld(all, isFact("fromLot"))
      ? { ...column, target: fromLot, others: [] }
      : { ...column, others: [fromLot] };
  }
  return allDiffer(column) ? { ...column, target: first, others: [] } : column;
};

/** "Qty" behind the day of a step: its plants, where nothing else is. */
export const countBeside: Found = (column, at, all) => {
  const before = all[at - 1]?.target;
  if (before?.kind !== "step" || before.what !== "day") return column;
  const { says, unknown, aspect } = headerParts(column.header);
  const isAside = [...says].every((part) => part === "aside");
  const countAlone = unknown === 0 && isAside && (aspect === "count" || says.size > 0);
  if (!countAlone || column.values().holds !== "count") return column;
  if (isHeld(all, isStep(before.key, "count"))) return column;
  return { ...column, target: { ...before, what: "count" } };
};

/** "No" before all steps, each another: the batches, where nothing else names them. */
export const numbered: Found = (column, at, all) => {
  const { says, unknown, aspect } = headerParts(column.header);
  const isNumber = says.size === 0 && unknown === 0 && aspect === "count";
  if (!isNumber || /\d/.test(column.header) || !allDiffer(column)) return column;
  const firstStep = all.findIndex(({ target }) => target?.kind === "step");
  if (isHeld(all, isFact("batch")) || (firstStep >= 0 && firstStep < at)) return column;
  return { ...column, target: { kind: "fact", fact: "batch" }, others: [] };
};

/** "Scion" over names, beside the rootstocks: the variety. */
export const scionBesideStock: Found = (column, _at, all) => {
  const variety = isFact("variety");
  const first = column.others[0];
  const { says, unknown } = headerParts(column.header);
  const isScion = says.size === 1 && says.has("scion") && unknown === 0;
  if (first === undefined || !variety(first) || !isScion) return column;
  if (isHeld(all, variety) || !isHeld(all, isFact("rootstock"))) return column;
  return column.values().holds === "text" ? { ...column, target: first, others: [] } : column;
};

const WAYS = wordSet((words) => [...Object.values(words.ways).flat(), ...words.budding]);

/** Of a word among others: the "T" of "T-201" and the "S" of a name are no way (our choice). */
const LETTERS_OF_A_WAY = 3;

/** "Type" over ways of propagation: the method. */
export const namesWays: Found = (column, _at, all) => {
  const method = isFact("method");
  const first = column.others[0] ?? { kind: "fact", fact: "method" };
  if (!method(first) || column.isOther || isHeld(all, method)) return column;
  const texts = column.values().texts.map(normalText);
  const isWay = (word: string) => word.length >= LETTERS_OF_A_WAY && WAYS.has(word);
  const known = texts.filter((text) => WAYS.has(text) || text.split(" ").some(isWay));
  return known.length * 2 > texts.length ? { ...column, target: first, others: [] } : column;
};

const YES = wordSet((words) => words.yes);
/** "x", "ok" say less (our choice). */
const LETTERS_OF_A_YES = 3;

/** "Done" over nothing as yet: the batches that are closed will be marked there. */
export const toBeClosed: Found = (column, _at, all) => {
  const closed = isFact("closed");
  const word = normalText(column.header);
  if (word.length < LETTERS_OF_A_YES || !YES.has(word) || column.values().holds !== null)
    return column;
  return isHeld(all, closed)
    ? column
    : { ...column, target: { kind: "fact", fact: "closed" }, others: [] };
};

/** "Sortie" over plants: those that left. */
export const wentOut: Found = (column, _at, all) => {
  const gone = isFact("dispatched");
  const first = column.others[0];
  if (first === undefined || !gone(first) || isHeld(all, gone)) return column;
  const { says, unknown } = headerParts(column.header);
  return says.has("out") && unknown === 0 ? { ...column, target: first, others: [] } : column;
};

/** "Sujets", "Tocos" over counts: the stocks that were set out, where nothing else says how many. */
export const stocksSetOut =
  (stepKeys: readonly string[]): Found =>
  (column, _at, all) => {
    const [first] = column.others;
    const target = { kind: "step", key: "sowing", what: "count" } as const;
    if (first === undefined || !isFact("rootstock")(first)) return column;
    if (isHeld(all, isStep("sowing", "count")) || headerParts(column.header).unknown > 0)
      return column;
    return fitsInPlace(column, target, { all, stepKeys })
      ? { ...column, target, others: [] }
      : column;
  };

/** Who works, or verbs alone ("Enxertou"), over names: in records those who grafted, where nothing else names them. */
export const whoGrafted: Found = (column, _at, all) => {
  const grafter = isFact("grafter");
  const first = column.others[0];
  const { holds, plainly } = column.values();
  if (first === undefined || !grafter(first) || holds !== "text" || !plainly) return column;
  if (isHeld(all, grafter)) return column;
  const { says, unknown } = headerParts(column.header);
  const isWho = says.has("person") || says.has("by");
  const isVerb = says.has("graft") && isHeld(all, isFact("variety"));
  if (unknown > 0 || says.has("check") || !(isWho || isVerb)) return column;
  return { ...column, target: first, others: [] };
};

const NAMES = wordSet((words) => words.name);
const PERSON: ColumnTarget = { kind: "event", fact: "eventPerson" };

/** "Quem fez", or a bare "Nome", in a log, where no other column says who. */
export const personOfLog: Found = (column, _at, all) => {
  const first = column.others[0] ?? (NAMES.has(normalText(column.header)) ? PERSON : undefined);
  const isPerson = (target: ColumnTarget) =>
    target.kind === "event" && target.fact === "eventPerson";
  if (first === undefined || !isPerson(first) || isHeld(all, isPerson)) return column;
  return column.values().holds === "text" && headerParts(column.header).unknown === 0
    ? { ...column, target: first, others: [] }
    : column;
};

/** "Quant." in a log, where no other column says how many. */
export const countOfLog: Found = (column, _at, all) => {
  const isCount = (target: ColumnTarget) => target.kind === "event" && target.fact === "eventCount";
  const { says, unknown, aspect } = headerParts(column.header);
  const isAside = [...says].every((part) => part === "aside");
  if (aspect !== "count" || !isAside || unknown > 0 || isHeld(all, isCount)) return column;
  return column.values().holds === "count"
    ? { ...column, target: { kind: "event", fact: "eventCount" }, others: [] }
    : column;
};

/** What a header says without being sure, where the column stands in the place of that step. */
export const inItsPlace =
  (stepKeys: readonly string[]): Found =>
  (column, _at, all) => {
    const [first] = column.others;
    if (!column.isLikely || first?.kind !== "step") return column;
    if (isHeld(all, isStep(first.key, first.what))) return column;
    // "Polybag date" may be the day on which it was sown into the bag.
    const isBefore = ["sowing", "germination"].some((key) => isHeld(all, isStep(key, first.what)));
    const isPair = first.what === "count" && isHeld(all, isStep(first.key, "day"));
    if (first.key === "potting on" && !isBefore && !isPair) {
      return column;
    }
    return fitsInPlace(column, first, { all, stepKeys })
      ? { ...column, target: first, others: [] }
      : column;
  };

/** "Check date" beside "Check, alive": a step's day begins with the very word of its plants. */
export const dayOfPair: Found = (column, _at, all) => {
  const [day] = column.others;
  if (day?.kind !== "step" || day.what !== "day" || column.values().holds !== "day") return column;
  const firstWord = (header: string) => normalText(header).split(" ")[0];
  const pair = all.some(
    ({ header, target }) =>
      target !== null &&
      isStep(day.key, "count")(target) &&
      firstWord(header) === firstWord(column.header),
  );
  return pair && !isHeld(all, isStep(day.key, "day")) ? { ...column, target: day } : column;
};

/** What another column is read as already is no suggestion, and is found by place once more. */
export const notHeldYet: Found = (column, _at, all) => {
  if (column.isSaid) return column;
  const free = column.others.filter(
    (one) => !isHeld(all, (target) => targetKey(target) === targetKey(one)),
  );
  return { ...column, others: free, isOther: column.isOther || column.others.length > free.length };
};

/** A column of texts that all differ may name the batches where nothing does. */
export function asNames(column: ColumnSeen, all: readonly ColumnSeen[]): readonly ColumnTarget[] {
  const isName = column.values().holds !== "day" && allDiffer(column);
  if (!isName || isHeld(all, isFact("batch"))) return [];
  return [{ kind: "fact", fact: "batch" }];
}
