import { type Answer, type AnswerValue, columns } from "../answer";
import { leftOutRemark, type Records } from "../records/records";
import { type ReasonColumn, type ReasonResult, reasonsFit } from "../statistics/reasons-fit";
import { countedBatches, notUsedSentences } from "./counted-batches";
import { type RecordedColumn, recordedColumns } from "./reason-columns";

export interface ReasonsQuestion {
  readonly records: Records;
  /** Strictly between 0 and 1. */
  readonly level: number;
}

/** A group of fewer batches is not looked at on its own (our choice). */
const FEWEST_BATCHES = 3;
const NOT_CAUSING = "Going with takes is not causing them: what else changed at the same time?";

/**
 * Which recorded columns go with takes, most first, alone and beside the others.
 *
 * Best and Worst are groups with their take rate, everything else as it is over all batches; they
 * are blank where no link is clear.
 *
 * @throws InputError "unknown-column" when the records have no grafts or no takes
 */
export function reasonsAnswer({ records, level }: ReasonsQuestion): Answer {
  const batches = countedBatches(records);
  const named = recordedColumns(records, batches.counted);
  const usable = named.map(levelled);
  const asked = usable.filter((column) => column !== null);
  const results = reasonsFit(batches.counted, asked);
  const resultOf = new Map(asked.map((column, place) => [column, results[place]]));
  const rows = named.map((column, place): AnswerValue[] => {
    const own = usable[place] ?? null;
    const result = own === null ? undefined : resultOf.get(own);
    const groups = new Set(column.texts.filter((text) => text !== "").map(key)).size;
    if (own === null || result === undefined || result.aloneByChance === null) {
      return [column.name, groups, null, null, null, "too few to tell"];
    }
    const clear = isClear(result, level);
    const [best, worst] = clear.alone || clear.beside ? bestAndWorst(own, result) : [null, null];
    return [column.name, groups, result.alone, best, worst, reading(result, clear, asked.length)];
  });
  rows.sort((a, b) => Number(b[2] ?? -1) - Number(a[2] ?? -1) || (`${a[0]}` < `${b[0]}` ? -1 : 1));
  const remarks = [NOT_CAUSING, ...notUsedSentences(batches), leftOutRemark(records)];
  return {
    columns: columns({
      Column: "text",
      Groups: "count",
      "Spread explained": "share",
      Best: "text",
      Worst: "text",
      Reading: "text",
    }),
    rows,
    remark: remarks.filter((one) => one !== null).join(" "),
  };
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
    const one = sizes.get(key(text));
    if (one === undefined) sizes.set(key(text), { name: text, size: 1 });
    else one.size += 1;
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
  readonly beside: boolean;
}

function isClear({ aloneByChance, besideByChance }: ReasonResult, level: number): Clear {
  // A column is looked at twice, so each look has half of what may go wrong.
  const falsely = (1 - level) / 2;
  return {
    alone: aloneByChance !== null && aloneByChance <= falsely,
    beside: besideByChance !== null && besideByChance <= falsely,
  };
}

function reading({ beside }: ReasonResult, { alone, beside: stays }: Clear, asked: number): string {
  if (asked === 1) return alone ? "goes with takes" : "no clear link";
  if (beside === null) {
    return alone ? "goes with takes; too few batches to tell it from the others" : "no clear link";
  }
  if (alone && stays) return "goes with takes, also where the other columns are alike";
  if (alone) return "goes with takes, but what else differed may be behind it";
  return stays ? "shows only where the other columns are alike" : "no clear link";
}

function bestAndWorst(
  { names }: LevelledColumn,
  { rates }: ReasonResult,
): readonly [string | null, string | null] {
  const known = names.flatMap((name, level) =>
    name === null ? [] : [{ name, rate: rates[level] as number }],
  );
  known.sort((a, b) => b.rate - a.rate || (a.name < b.name ? -1 : 1));
  const said = (one: (typeof known)[number] | undefined) =>
    one === undefined ? null : `${one.name} (${Math.round(one.rate * 100)} %)`;
  return [said(known[0]), said(known[known.length - 1])];
}
