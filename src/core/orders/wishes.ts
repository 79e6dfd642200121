import { cellText } from "../cells";
import { lazily } from "../lazily";
import { madeOnce } from "../made-once";
import { foldName } from "../names";
import type { Batch, Records } from "../records";
import { batchMethods, cropsIn, type Method, methodWords, type Timetable } from "../timetable";
import { normalText, wordPattern, wordSet } from "../words";
import { type KnownVarieties, type Order, varietiesIn } from "./order";

/** One of the things of which any will do for an order. */
export interface Wish {
  /** As it is written; empty where the crop alone is wanted, by a column of its own. */
  readonly written: string;
  /** Folded; null for any. */
  readonly variety: string | null;
  /** Whether a batch has that variety. */
  readonly isKnown: boolean;
  /** Of which crops: as methodWords names them, or folded; none for any. */
  readonly crops: readonly string[];
}

/** What a batch is called: its variety, folded and perhaps empty, and its crops, in the same way. */
export interface Called {
  readonly variety: string;
  readonly crops: readonly string[];
}

type Asked = Pick<Order, "variety" | "crop">;

/** Words between varieties of which any will do, which a split keeps. */
const either = lazily(
  () => new RegExp(`(\\s+(?:${wordPattern((words) => words.either)})\\s+|\\s*[/;,|]\\s*)`, "i"),
);
const ANY = lazily(
  () => new RegExp(`(?<=^| )(?:${wordPattern((words) => words.anyVariety)})(?= |$)`, "g"),
);
const KINDS = wordSet((words) => words.cropKinds);
const NOTHING = wordSet((words) => words.nothing);

/** A variety's own name holds no more words such as "or" than this. */
const MOST_IN_A_NAME = 3;

/** A variety, or several of which any will do, in our names for each. */
export function varietyAsTold(written: string, nameOf: (word: string) => string): string {
  const whole = nameOf(written);
  if (whole !== written) return whole;
  const pieces = cellText(written).split(either());
  return pieces.map((piece, at) => (at % 2 === 0 ? nameOf(piece) : piece)).join("");
}

/**
 * What an order takes, the first one first; none where any plant will do. A crop in the words of any
 * language, with or without "any", is every variety of it.
 *
 * @param known varieties of batches: a name that is one of them is neither taken apart nor a crop
 */
export function wishesOf({ variety, crop = "" }: Asked, known: KnownVarieties): readonly Wish[] {
  const wishes = piecesOf(variety, known).map((piece) => wishIn(piece, known));
  const ofCrop = wishes.filter(({ variety: name, crops }) => name === null && crops.length > 0);
  // "Cocoa, any variety" says one thing in two pieces.
  const said = wishes.some(isAnyPlant) ? ofCrop : wishes;
  const beside = cropsIn(cellText(crop));
  if (beside.length === 0) return said;
  if (said.length === 0) return [{ written: "", variety: null, isKnown: true, crops: beside }];
  return said.map((wish) => (wish.crops.length > 0 ? wish : { ...wish, crops: beside }));
}

function isAnyPlant({ variety, crops }: Wish): boolean {
  return variety === null && crops.length === 0;
}

/** What is written between words such as "or", none where nothing is. */
function piecesOf(variety: string, known: KnownVarieties): readonly string[] {
  const text = cellText(variety);
  if (foldName(text) === "" || NOTHING.has(normalText(text))) return [];
  if (known.has(foldName(text))) return [text];
  // Without runs of white space, over which the pattern would go again and again.
  const pieces = text.split(either());
  const names: string[] = [];
  for (let at = 0; at < pieces.length; ) {
    const name = (end: number) => pieces.slice(at, end).join("").trim();
    let end = Math.min(pieces.length, at + 1 + 2 * MOST_IN_A_NAME);
    while (end > at + 1 && !known.has(foldName(name(end)))) end -= 2;
    names.push(name(end));
    at = end + 1;
  }
  return names.filter((name) => foldName(name) !== "");
}

function wishIn(written: string, known: KnownVarieties): Wish {
  const named = (variety: string, crops: readonly string[]): Wish => ({
    written,
    variety,
    isKnown: known.has(variety),
    crops,
  });
  const anyOf = (crops: readonly string[]) => ({ written, variety: null, isKnown: true, crops });
  const whole = foldName(written);
  if (known.has(whole)) return named(whole, []);
  const text = normalText(written);
  const rest = text.replace(ANY(), "").replace(/ +/g, " ").trim();
  if (rest === "") return anyOf([]);
  if (known.has(foldName(rest))) return named(foldName(rest), []);
  const { crops, ways, isBudding, isAtTop, others } = methodWords(rest);
  const isKind = rest.split(" ").some((word) => KINDS.has(word));
  if (crops.length > 0 && !isKind && ways.length === 0 && !isBudding && !isAtTop) {
    return others.length === 0 ? anyOf(crops) : named(foldName(others.join(" ")), crops);
  }
  return rest === text ? named(whole, []) : anyOf([foldName(rest)]);
}

/** Whether a batch will do. */
export function grants(wishes: readonly Wish[], batch: Called): boolean {
  return wishes.length === 0 || wishes.some((wish) => fits(wish, batch));
}

function fits({ variety, isKnown, crops }: Wish, batch: Called): boolean {
  // A name that no batch has as its variety may be a crop that only the records know.
  const isCalled =
    variety === null || variety === batch.variety || (!isKnown && batch.crops.includes(variety));
  return isCalled && (crops.length === 0 || crops.some((crop) => batch.crops.includes(crop)));
}

/** Tells what batches are called: the crop by its own column, else by the method. */
export function batchCaller(): (batch: Batch, method: Method | null) => Called {
  const called = new Map<string, Called>();
  return ({ variety, crop, method }, ofMethod) =>
    madeOnce(called, `${variety}\n${crop}\n${method}`, () => {
      const written = crop === "" ? methodWords(method).crops : [...cropsIn(crop), foldName(crop)];
      const crops = written.length > 0 ? written : methodWords(ofMethod?.name ?? "").crops;
      return { variety: foldName(variety), crops };
    });
}

/** The names that the records know, whatever became of the batches. */
export interface KnownNames {
  readonly varieties: KnownVarieties;
  /** What batches are called, each once. */
  readonly called: readonly Called[];
}

export function namesKnown(records: Pick<Records, "batches">, timetable: Timetable): KnownNames {
  const read = batchMethods(timetable);
  const calledOf = batchCaller();
  const called = records.batches.map((batch) => {
    const reading = read(batch);
    return calledOf(batch, reading.code === "method" ? reading.method : null);
  });
  return { varieties: varietiesIn(records), called: [...new Set(called)] };
}

/**
 * What of an order no batch is. None where the records have no batch, and of its varieties none where
 * they name no variety.
 */
export function unknownWishes(
  wishes: readonly Wish[],
  { varieties, called }: KnownNames,
): readonly Wish[] {
  return wishes.filter(
    (wish) =>
      called.length > 0 &&
      (wish.variety === null || varieties.size > 0) &&
      !called.some((one) => grants([wish], one)),
  );
}

/** The varieties that an order names, folded, the first one first. */
export function varietiesOf(order: Asked, known: KnownVarieties): readonly string[] {
  return [...new Set(wishesOf(order, known).flatMap(({ variety }) => variety ?? []))];
}

/** The same as they are written. */
export function writtenVarieties(order: Asked, known: KnownVarieties): readonly string[] {
  return wishesOf(order, known).flatMap(({ variety, written }) =>
    variety === null ? [] : written,
  );
}

/** The first variety of an order, as the records spell it; as it is written where they lack it. */
export function firstVariety(order: Asked, known: KnownVarieties): string {
  const [first] = wishesOf(order, known).filter(({ variety }) => variety !== null);
  return first === undefined ? "" : (known.get(first.variety as string) ?? first.written);
}

/** The name of the method by which a crop that is ordered is raised; null where none is said. */
export function methodOfCrop(timetable: Timetable, variety: string): string | null {
  const crop = wishesOf({ variety }, new Map())[0]?.crops.join(" ") ?? "";
  const reading = crop === "" ? null : batchMethods(timetable)({ method: "", crop });
  return reading?.code === "method" ? reading.method.name : null;
}
