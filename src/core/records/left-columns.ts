import { normalText } from "../words";
import type { ColumnMatch, ColumnSeen, TableKind } from "./column-match";
import { type ColumnTarget, targetKey } from "./column-target";
import { headerParts } from "./header-parts";
import { isOutOfPlace, mayBeByPlace } from "./suggest-by-place";
import type { Trouble } from "./trouble";

/** What is found out of a column by the columns beside it. */
type Found = (column: ColumnSeen, at: number, all: readonly ColumnSeen[]) => ColumnSeen;

/**
 * Columns that the header and cells of their own do not settle: first what their neighbours make plain, then
 * what they may be. Each that stays alone is a trouble, unless one names it already, or another answer
 * uses it.
 *
 * @param stepKeys the steps that there may be columns of, in their order
 */
export function leftColumns(
  matches: readonly ColumnSeen[],
  { kind, stepKeys }: { readonly kind: TableKind; readonly stepKeys: readonly string[] },
): { readonly matches: readonly ColumnMatch[]; readonly troubles: readonly Trouble[] } {
  const byPlace: Found = (column, _at, all) =>
    column.others.length > 0 || column.isOther
      ? column
      : { ...column, others: [...asNames(column, all), ...mayBeByPlace(column, all, stepKeys)] };
  const rules: readonly Found[] =
    kind === "log" ? [] : [namedUniquely, countBeside, dayOfPair, notHeldYet, byPlace];
  const inPlace = matches.map(
    (column): ColumnSeen =>
      column.target !== null && isOutOfPlace(column, matches)
        ? { ...column, target: null, sureness: 1, others: [column.target, ...column.others] }
        : column,
  );
  const found = rules.reduce<readonly ColumnSeen[]>(
    (columns, rule) =>
      columns.map((column, at) => (isLeft(column) ? rule(column, at, columns) : column)),
    inPlace,
  );
  const troubles = found.flatMap((column): Trouble[] => {
    if (column.header === "") return withoutHeader(column);
    if (!isLeft(column) || column.isSaid) return [];
    const { header, others } = column;
    const { holds } = column.values();
    if (holds === null) return [];
    return [{ row: null, column: header, found: header, code: "column-left", holds, others }];
  });
  return { matches: found, troubles };
}

/** Days or plants under no header: the number of the column, from 1, stands for its name. */
function withoutHeader({ column, values }: ColumnSeen): Trouble[] {
  const { holds, plainly, filled } = values();
  if (holds === null || holds === "text" || !plainly || filled < FEWEST_NAMES) return [];
  const found = String(column + 1);
  return [{ row: null, column: "", found, code: "column-left", holds, others: [] }];
}

function isLeft({ header, target, sureness }: ColumnSeen): boolean {
  return header !== "" && target === null && sureness < 4;
}

const isHeld = (columns: readonly ColumnSeen[], is: (target: ColumnTarget) => boolean) =>
  columns.some(({ target }) => target !== null && is(target));

const isFact = (fact: string) => (target: ColumnTarget) =>
  target.kind === "fact" && target.fact === fact;

const isStep = (key: string, what: "day" | "count") => (target: ColumnTarget) =>
  target.kind === "step" && target.key === key && target.what === what;

/** Fewer say nothing of whether names differ. */
const FEWEST_NAMES = 3;
const NEARLY_ALL = 0.95;

/** Whether nearly every cell of a column is another, as names of batches are. */
function allDiffer({ values }: ColumnSeen): boolean {
  const { filled, different } = values();
  return filled >= FEWEST_NAMES && different() >= NEARLY_ALL * filled;
}

/** "Bag lot" names batches where nothing else does and each is another, else the lots that they came from. */
const namedUniquely: Found = (column, _at, all) => {
  const [first] = column.others;
  if (first === undefined || !isFact("batch")(first)) return column;
  if (isHeld(all, isFact("batch")))
    return { ...column, others: [{ kind: "fact", fact: "fromLot" }] };
  return allDiffer(column) ? { ...column, target: first, others: [] } : column;
};

/** "Qty" behind the day of a step: its plants, where nothing else is. */
const countBeside: Found = (column, at, all) => {
  const before = all[at - 1]?.target;
  if (before?.kind !== "step" || before.what !== "day") return column;
  const { says, unknown, aspect } = headerParts(column.header);
  const countAlone = aspect === "count" && unknown === 0 && says.size === 0;
  if (!countAlone || column.values().holds !== "count") return column;
  if (isHeld(all, isStep(before.key, "count"))) return column;
  return { ...column, target: { ...before, what: "count" } };
};

/** "Check date" beside "Check, alive": a step's day begins with the very word of its plants. */
const dayOfPair: Found = (column, _at, all) => {
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
const notHeldYet: Found = (column, _at, all) => {
  if (column.isSaid) return column;
  const free = column.others.filter(
    (one) => !isHeld(all, (target) => targetKey(target) === targetKey(one)),
  );
  return { ...column, others: free, isOther: column.isOther || column.others.length > free.length };
};

/** A column of texts that all differ may name the batches where nothing does. */
function asNames(column: ColumnSeen, all: readonly ColumnSeen[]): readonly ColumnTarget[] {
  const isName = column.values().holds !== "day" && allDiffer(column);
  if (!isName || isHeld(all, isFact("batch"))) return [];
  return [{ kind: "fact", fact: "batch" }];
}
