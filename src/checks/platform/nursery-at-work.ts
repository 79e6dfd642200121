import type { AnswerOf, CallResult, RequestOf, SidebarCallName } from "../../wire/calls";
import type { Emulated } from "./emulator";
import { found, must } from "./steps";

/** A tab whose columns are found by their headers, wherever they stand. */
export interface HeadedTab {
  readonly tab: string;
  /** Rows below the header. */
  readonly rows: readonly HeadedRow[];
}

export interface HeadedRow {
  /** In the sheet, from 1. */
  readonly row: number;
  value(header: string): unknown;
  /** Column of a header, from 1. @throws Error where the tab has none of that name */
  column(header: string): number;
}

/** The rows of a tab below the first row that holds all these headers. */
export function headedTab(
  { person }: Emulated,
  tab: string,
  headers: readonly string[],
): HeadedTab {
  const values = person.values(tab);
  const at = values.findIndex((row) => headers.every((header) => row.includes(header)));
  must(at >= 0, `${tab} has no row with the headers ${headers.join(", ")}`);
  const column = (header: string) => {
    const index = values[at]?.indexOf(header) ?? -1;
    must(index >= 0, `${tab} has no column ${header}`);
    return index + 1;
  };
  return {
    tab,
    rows: values.slice(at + 1).map((cells, below) => ({
      row: at + 2 + below,
      column,
      value: (header) => cells[column(header) - 1],
    })),
  };
}

/** What a call of the sidebar answers. @throws Error with its sentence where it fails */
export function ask<Name extends SidebarCallName>(
  work: Emulated,
  name: Name,
  request: RequestOf<Name>,
): AnswerOf<Name> {
  const result = work.run(name, request) as CallResult<AnswerOf<Name>> | null | undefined;
  const answer = found(result, `${name} answered nothing`);
  if (!answer.ok) throw new Error("fault" in answer ? JSON.stringify(answer.fault) : answer.error);
  return answer.data;
}
