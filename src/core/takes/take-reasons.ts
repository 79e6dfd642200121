import type { Kinds } from "../answer";
import { madeOnce } from "../made-once";
import { leftOut, type Records } from "../records";
import { type ReasonColumn, type ReasonResult, reasonsFit } from "../statistics";
import { countedBatches } from "./counted-batches";
import { type RecordedColumn, recordedColumns } from "./reason-columns";
import { notUsed, type TakesRemark } from "./takes-remark";

export interface ReasonsQuestion {
  readonly records: Records;
  /** Strictly between 0 and 1. */
  readonly level: number;
}

/**
 * How a column goes with takes. "stays": also where the other columns are alike; "others may be
 * behind": on its own, but not beside the others; "not told apart": on its own, with too few batches
 * to look beside the others; "alone": on its own, and there is no other; "only beside": only where
 * the others are alike.
 */
export type ReasonReading =
  | "stays"
  | "others may be behind"
  | "not told apart"
  | "alone"
  | "only beside"
  | "no clear link"
  | "too few to tell";

export const REASON_COLUMNS = {
  column: "text",
  groups: "count",
  explained: "share",
  best: "text",
  worst: "text",
  reading: "text",
} as const satisfies Kinds;

/** A group of a column, with its take rate, 0 to 1, everything else as it is over all batches. */
export interface RatedGroup {
  readonly name: string;
  readonly takeRate: number;
}

export interface TakeReason {
  readonly column: string;
  /** Whether its groups are people. */
  readonly people: boolean;
  readonly groups: number;
  /** Share of the difference between batches, 0 to 1; null where there are too few. */
  readonly explained: number | null;
  /** Null where no link is clear. */
  readonly best: RatedGroup | null;
  readonly worst: RatedGroup | null;
  readonly reading: ReasonReading;
}

export interface TakeReasons {
  /** Most first. */
  readonly reasons: readonly TakeReason[];
  /** First that going with takes is not causing them, whatever was found. */
  readonly remarks: readonly TakesRemark[];
}

/** A group of fewer batches is not looked at on its own (our choice). */
const FEWEST_BATCHES = 3;

/**
 * Which recorded columns go with takes, most first, alone and beside the others.
 *
 * @throws InputError "no-grafts" | "no-takes"
 */
export function takeReasons({ records, level }: ReasonsQuestion): TakeReasons {
  const batches = countedBatches(records);
  const named = recordedColumns(records, batches.counted);
  const usable = named.map(levelled);
  const asked = usable.filter((column) => column !== null);
  const results = reasonsFit(batches.counted, asked);
  const resultOf = new Map(asked.map((column, index) => [column, results[index]]));
  const reasons = named.map((column, index): TakeReason => {
    const own = usable[index] ?? null;
    const result = own === null ? undefined : resultOf.get(own);
    const { name, people, texts } = column;
    const groups = new Set(texts.filter((text) => text !== "").map(key)).size;
    const shared = { column: name, people, groups };
    if (own === null || result === undefined || result.aloneByChance === null) {
      return { ...shared, explained: null, best: null, worst: null, reading: "too few to tell" };
    }
    const clear = isClear(result, level);
    return {
      ...shared,
      explained: result.alone,
      ...(clear.alone || clear.besideOthers
        ? bestAndWorst(own, result)
        : { best: null, worst: null }),
      reading: reading(result, clear, asked.length),
    };
  });
  reasons.sort(
    (a, b) => (b.explained ?? -1) - (a.explained ?? -1) || (a.column < b.column ? -1 : 1),
  );
  return { reasons, remarks: [{ code: "not-cause" }, ...notUsed(batches), ...leftOut(records)] };
}

interface LevelledColumn extends ReasonColumn {
  /** Null for blanks, and for groups too small to be looked at on their own. */
  readonly names: readonly (string | null)[];
}

function key(text: string): string {
  return text.toLowerCase();
}

/** A column's groups by size, the largest first; null when fewer than two are large enough. */
function levelled({ texts }: RecordedColumn): LevelledColumn | null {
  const sizes = new Map<string, { name: string; size: number }>();
  for (const text of texts) {
    if (text === "") continue;
    madeOnce(sizes, key(text), () => ({ name: text, size: 0 })).size += 1;
  }
  const large = [...sizes]
    .filter(([, { size }]) => size >= FEWEST_BATCHES)
    .sort(([a, one], [b, other]) => other.size - one.size || (a < b ? -1 : 1));
  if (large.length < 2) return null;
  const levelOf = new Map(large.map(([text], level) => [text, level]));
  const names: (string | null)[] = large.map(([, { name }]) => name);
  const others = texts.some((text) => text !== "" && !levelOf.has(key(text)));
  const small = others ? names.push(null) - 1 : -1;
  const blank = texts.includes("") ? names.push(null) - 1 : -1;
  return {
    names,
    levelCount: names.length,
    levels: texts.map((text) => (text === "" ? blank : (levelOf.get(key(text)) ?? small))),
  };
}

interface Clear {
  readonly alone: boolean;
  readonly besideOthers: boolean;
}

function isClear({ aloneByChance, besideOthersByChance }: ReasonResult, level: number): Clear {
  // A column is looked at twice, so each look has half of what may go wrong.
  const falsely = (1 - level) / 2;
  return {
    alone: aloneByChance !== null && aloneByChance <= falsely,
    besideOthers: besideOthersByChance !== null && besideOthersByChance <= falsely,
  };
}

function reading(
  { besideOthers }: ReasonResult,
  { alone, besideOthers: stays }: Clear,
  asked: number,
): ReasonReading {
  if (asked === 1) return alone ? "alone" : "no clear link";
  if (besideOthers === null) return alone ? "not told apart" : "no clear link";
  if (alone) return stays ? "stays" : "others may be behind";
  return stays ? "only beside" : "no clear link";
}

function bestAndWorst(
  { names }: LevelledColumn,
  { rates }: ReasonResult,
): Pick<TakeReason, "best" | "worst"> {
  const known = names.flatMap((name, level) =>
    name === null ? [] : [{ name, takeRate: rates[level] as number }],
  );
  known.sort((a, b) => b.takeRate - a.takeRate || (a.name < b.name ? -1 : 1));
  return { best: known[0] ?? null, worst: known[known.length - 1] ?? null };
}
