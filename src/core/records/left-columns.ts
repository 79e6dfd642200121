import type { ColumnMatch, ColumnSeen, TableKind } from "./column-match";
import { inPairs } from "./numbered-pairs";
import {
  asNames,
  countBeside,
  countOfLog,
  dayOfPair,
  FEWEST_NAMES,
  type Found,
  inItsPlace,
  namedUniquely,
  namesWays,
  notHeldYet,
  numbered,
  personOfLog,
  scionBesideStock,
  stocksSetOut,
  toBeClosed,
  wentOut,
  whoGrafted,
} from "./rules-by-place";
import { isOutOfPlace, mayBeByPlace } from "./suggest-by-place";
import type { Trouble } from "./trouble";
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
  const passes: readonly Pass[] =
    kind === "log"
      ? [personOfLog, countOfLog].map(once)
      : [
          ...[inPairs(matches), namedUniquely, scionBesideStock, numbered, namesWays].map(once),
          ...[toBeClosed, wentOut, whoGrafted, countBeside, dayOfPair].map(once),
          untilSettled(inItsPlace(stepKeys)),
          ...[stocksSetOut(stepKeys), notHeldYet, byPlace].map(once),
        ];
  const inPlace: readonly ColumnSeen[] = matches.map(
    (column): ColumnSeen =>
      column.target !== null && isOutOfPlace(column, matches)
        ? {
            ...column,
            isLikely: true,
            target: null,
            sureness: 1,
            others: [column.target, ...column.others],
          }
        : column,
  );
  const found = passes.reduce((columns, pass) => pass(columns), inPlace);
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

type Pass = (columns: readonly ColumnSeen[]) => readonly ColumnSeen[];

/** One look of a rule at every column that is left. */
function once(rule: Found): Pass {
  return (columns) =>
    columns.map((column, at) => (isLeft(column) ? rule(column, at, columns) : column));
}

/** As many looks as change something: what is settled of one column may be what another waits for. */
function untilSettled(rule: Found): Pass {
  const look = once(rule);
  const settled: Pass = (columns) => {
    const next = look(columns);
    return next.every((one, at) => one === columns[at]) ? columns : settled(next);
  };
  return settled;
}

/**
 * Days, plants or remarks under no header: the number of the column, from 1, stands for its name. A figure
 * or two may be a sum that somebody made beside the table.
 */
function withoutHeader({ column, values }: ColumnSeen): Trouble[] {
  const { holds, plainly, filled } = values();
  if (holds === null) return [];
  if (holds !== "text" && (!plainly || filled < FEWEST_NAMES)) return [];
  const found = String(column + 1);
  return [{ row: null, column: "", found, code: "column-left", holds, others: [] }];
}

function isLeft({ header, target, sureness }: ColumnSeen): boolean {
  return header !== "" && target === null && sureness < 4;
}
