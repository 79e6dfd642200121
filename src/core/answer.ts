import type { CivilDay } from "./dates";

/** What the values of a column are, so that each face can show them its own way. */
export type ColumnKind = "text" | "day" | "count" | "share" | "hours" | "number";

/** The columns of a capability's rows by key, with their kinds, in order. Headers stand in src/wording. */
export type Kinds = Readonly<Record<string, ColumnKind>>;

/** What stands in a row's cells, by the keys of its columns; null is "not known" or "does not apply". */
export type Cells<Columns extends Kinds> = {
  readonly [Key in keyof Columns]: (Columns[Key] extends "text" ? string : number) | null;
};

/**
 * A row of such columns as core gives it: days are civil days, null is "not known" or "does not
 * apply". `Own` says what some of them hold instead.
 */
export type RowOf<Columns extends Kinds, Own extends Partial<Record<keyof Columns, unknown>>> = {
  readonly [Key in keyof Columns]: Key extends keyof Own
    ? Own[Key]
    : KindValue[Columns[Key]] | null;
};

/** A row of which nothing is known. */
export function blankRow<Columns extends Kinds>(
  kinds: Columns,
): { readonly [Key in keyof Columns]: null } {
  const blank: Partial<Record<keyof Columns, null>> = {};
  for (const key of Object.keys(kinds) as (keyof Columns)[]) blank[key] = null;
  return blank as Record<keyof Columns, null>;
}

interface KindValue {
  readonly text: string;
  readonly day: CivilDay;
  readonly count: number;
  /** 0 to 1. */
  readonly share: number;
  readonly hours: number;
  readonly number: number;
}

export interface AnswerColumn {
  readonly name: string;
  readonly kind: ColumnKind;
}

/** null is "not known" or "does not apply"; it is never shown as 0. A day is a CivilDay. */
export type AnswerValue = string | number | boolean | null;

/** A named list of columns and its rows: the one shape in which every capability answers. */
export interface Answer {
  readonly columns: readonly AnswerColumn[];
  readonly rows: readonly (readonly AnswerValue[])[];
  /** A closing sentence, such as how many rows could not be used. */
  readonly remark: string | null;
}

/** Names columns with their kinds, in order. @example columns({ Batch: "text" }) // [{ name: "Batch", kind: "text" }] */
export function columns(kinds: Readonly<Record<string, ColumnKind>>): AnswerColumn[] {
  return Object.keys(kinds).map((name) => ({ name, kind: kinds[name] as ColumnKind }));
}
