import {
  type Answer,
  CHECK_COLUMNS,
  type CheckedRecords,
  type RowTally,
  shortened,
  type Trouble,
  type TroubleEntry,
} from "../core";
import * as text from "../sentences/made/check";
import { headers } from "../sentences/made/check-columns";
import * as trouble from "../sentences/made/troubles";
import { tableOf } from "./table-of";
import { type TroubleWords, troubleWords, words } from "./trouble-words";

/** So many of equal troubles are quoted where they differ in what is found or said. */
const MOST_QUOTED = 3;

/** Equal troubles in the words of one; where their words differ, those of the first rows, each with its row. */
export function entryWords({ troubles }: TroubleEntry): Required<TroubleWords> {
  const said = troubles.map(troubleWords);
  const first = said[0] as Required<TroubleWords>;
  if (said.length === 1) return first;
  const founds = [...new Set(said.map(({ found }) => found))];
  const most = (texts: readonly string[], between: string) =>
    texts.slice(0, MOST_QUOTED).join(between) + (texts.length > MOST_QUOTED ? `${between}…` : "");
  const group = GROUPS[(troubles[0] as Trouble).code]?.(troubles, first.whatToDo) ?? {};
  const together = (field: "trouble" | "whatHappens" | "whatToDo") => {
    if (said.every((one) => one[field] === first[field])) return first[field];
    return most(
      said.map((one, at) => trouble.inRow({ row: troubles[at]?.row ?? 0, said: one[field] })),
      ". ",
    );
  };
  return {
    ...first,
    found: most(founds, ", "),
    trouble: together("trouble"),
    whatHappens: together("whatHappens"),
    whatToDo: together("whatToDo"),
    ...group,
  };
}

type OfCode<Code extends Trouble["code"]> = Extract<Trouble, { readonly code: Code }>;

/** What is said of equal troubles together where it is more than what is said of each. */
const GROUPS: Readonly<
  Partial<
    Record<Trouble["code"], (equal: readonly Trouble[], toDo: string) => Partial<TroubleWords>>
  >
> = {
  "before-step": (equal) => {
    const { step } = equal[0] as OfCode<"before-step">;
    const rows = equal.length;
    return {
      trouble: trouble.beforeStepRows({ step: shortened(step), rows }),
      whatToDo: trouble.beforeStepRowsToDo({ rows }),
    };
  },
  "too-soon": (equal) => {
    const { step, fewest } = equal[0] as OfCode<"too-soon">;
    const days = equal.map((one) => (one as OfCode<"too-soon">).days).sort((a, b) => a - b);
    const [least = 0] = days;
    const most = days[days.length - 1] ?? 0;
    return {
      ...(least < most && {
        trouble: trouble.tooSoonRows({ step: shortened(step), fewest, least, most }),
      }),
      whatToDo: trouble.tooSoonRowsToDo({ least, rows: equal.length }),
    };
  },
  "day-swapped": ({ length: rows }) => ({
    whatToDo: trouble.daySwappedRowsToDo({ rows }),
  }),
  "no-such-method": ofMethod,
  "several-methods": ofMethod,
  // One change in the timetable mends all rows.
  "line-without-step": ({ length: rows }, toDo) => ({ whatToDo: trouble.mendsAll({ toDo, rows }) }),
};

/** One answer in Set up counts for every row with that word, which need not all mean the same. */
function ofMethod({ length: rows }: readonly Trouble[], toDo: string): Partial<TroubleWords> {
  return { whatToDo: trouble.methodRowsToDo({ toDo, rows }) };
}

/** Which rows: "4, 7-9". */
function rowsText(troubles: readonly Trouble[]): string {
  const runs: [number, number][] = [];
  for (const { row } of troubles) {
    const run = runs[runs.length - 1];
    if (row === null || row === run?.[1]) continue;
    if (run !== undefined && row === run[1] + 1) run[1] = row;
    else runs.push([row, row]);
  }
  return runs.map(([from, to]) => (from === to ? from : `${from}-${to}`)).join(", ");
}

/** What became of every row. */
export const tallySentence: (rows: RowTally) => string = text.rowsUsed;

/** The troubles, most plants at stake first, equal ones together, and a last row that counts the rows of the range. */
export function checkTable({ entries, rows }: Pick<CheckedRecords, "entries" | "rows">): Answer {
  const none = { row: null, column: null, found: null, rows: null };
  const listed = entries.map((one) => {
    const { column, found, ...said } = entryWords(one);
    const { troubles } = one;
    return {
      row: troubles[0]?.row ?? null,
      column: column || null,
      found: found || null,
      ...said,
      rows: troubles.length === 1 ? null : rowsText(troubles),
    };
  });
  const noTrouble = { ...none, ...words(text.noTrouble(), text.rowsAllUsed(), text.nothingToDo()) };
  const all = Object.values(rows).reduce((sum, count) => sum + count, 0);
  const tally = {
    ...none,
    trouble: text.rows({ rows: all }),
    whatHappens: tallySentence(rows),
    whatToDo: null,
  };
  return tableOf({
    columns: CHECK_COLUMNS,
    headers: headers(),
    rows: [...(listed.length === 0 ? [noTrouble] : listed), tally].map((cells) => ({ cells })),
    remark: null,
  });
}
