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
  const inPlaceOf = inItsPlace(stepKeys);
  const rules: readonly Found[] =
    kind === "log"
      ? [personOfLog, countOfLog]
      : [
          inPairs(matches),
          namedUniquely,
          scionBesideStock,
          numbered,
          namesWays,
          wentOut,
          whoGrafted,
          countBeside,
          dayOfPair,
          // What one settles may be what another waits for.
          inPlaceOf,
          inPlaceOf,
          inPlaceOf,
          stocksSetOut(stepKeys),
          notHeldYet,
          byPlace,
        ];
  const inPlace = matches.map(
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
