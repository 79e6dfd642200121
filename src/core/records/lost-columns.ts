import type { Grid } from "../cells";
import { findTables } from "./find-tables";
import { headerWords } from "./header-words";
import type { ReadingOptions } from "./read-tables";
import { headerInSheet, targetTold } from "./target-names";

/** Something that was told of a column and can't be followed any more. */
export interface LostColumn {
  /** Our column name, as it was told. */
  readonly name: string;
  /** The header that it was told for. */
  readonly header: string;
  /** The table has no such header, or the name is none of ours. */
  readonly why: "header" | "name";
}

/**
 * What a person has told of columns that the table or the timetable no longer has: headers are
 * renamed, steps go.
 *
 * @returns empty when all of it can be followed, or when no table is found at all
 */
export function lostColumns(
  grid: Grid,
  { stepNames, told }: Pick<ReadingOptions, "stepNames" | "told">,
): readonly LostColumn[] {
  if (told.size === 0) return [];
  const headers = findTables(grid, headerWords(stepNames, told)).flatMap(
    ({ header }) => header.headers,
  );
  if (headers.length === 0) return [];
  const words = headerWords(stepNames);
  return [...told].flatMap(([header, name]): LostColumn[] => {
    if (headerInSheet(header, headers) === undefined) return [{ name, header, why: "header" }];
    return targetTold(name, words) === undefined ? [{ name, header, why: "name" }] : [];
  });
}
