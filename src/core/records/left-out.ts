import type { TimetableFault } from "../faults";
import type { Records } from "./records";

/** Rows that hold something, of which nothing could be used. */
interface RowsLeftOut {
  readonly code: "rows-left-out";
  readonly rows: number;
}

/** Batches whose method the timetable lacks, or which may be of several: named, each once. */
export interface MethodsUnread {
  readonly code: "no-such-method" | "several-methods";
  readonly batches: readonly string[];
}

/** Columns that were given names which are none of ours and no steps of the timetable. */
interface ColumnsUnknown {
  /** The second: columns that were told of, and are not in the table. */
  readonly code: "no-such-columns" | "no-such-headers";
  readonly columns: readonly {
    /** As it stands in the sheet. */
    readonly header: string;
    /** What it was called. */
    readonly name: string;
  }[];
}

/** What could not be used of the timetable: cells, rows with their steps, or whole methods. */
export interface TimetableLeftOut {
  readonly code: "timetable-left-out";
  readonly faults: readonly TimetableFault[];
}

/** A job that is due of some batches, but that no batch of the records was ever written to have had. */
export interface JobNeverRecorded {
  readonly code: "job-never-recorded";
  readonly step: string;
  readonly batches: number;
}

/** Repeated care, such as weeding, that falls on the as-of day. */
export interface CareToday {
  readonly code: "care-today";
  /** The places where it does; an empty one where batches name none. */
  readonly places: readonly string[];
  readonly tasks: readonly string[];
  /** What is to be heeded with them, each once. */
  readonly cautions: readonly string[];
  /** The batches there that it is for. */
  readonly batches: number;
}

/** Looks that would be due, where a nursery has switched them off. */
export interface LooksHidden {
  readonly code: "looks-hidden";
  readonly looks: number;
}

/** Shares of nurseries in general, not of the crop, that the numbers of an answer count on. */
export interface GeneralShares {
  readonly code: "general-shares";
  readonly shares: readonly {
    readonly step: string;
    readonly methods: readonly string[];
    /** 0 to 1. */
    readonly kept: number;
    /** What the records make of it; null where they say nothing else. */
    readonly mean: number | null;
  }[];
}

/** What no answer may leave out without a word; part of the remarks of each. */
export type LeftOut =
  | RowsLeftOut
  | ColumnsUnknown
  | TimetableLeftOut
  | MethodsUnread
  | JobNeverRecorded
  | LooksHidden
  | GeneralShares
  | CareToday;

/** A remark on what could not be used of a timetable, if anything. */
export function timetableLeftOut(
  faults: readonly TimetableFault[] | undefined,
): readonly TimetableLeftOut[] {
  return faults === undefined || faults.length === 0
    ? []
    : [{ code: "timetable-left-out", faults }];
}

/** Remarks on what was left out of the table, and of the timetable that it was read by. */
export function leftOut({ rows, troubles, timetableFaults }: Records): readonly LeftOut[] {
  const told = (wanted: "no-such-column" | "no-such-header"): readonly ColumnsUnknown[] => {
    const columns = troubles
      .filter(({ code }) => code === wanted)
      .map(({ column, found }) => ({ header: column, name: found }));
    return columns.length === 0 ? [] : [{ code: `${wanted}s`, columns }];
  };
  return [
    ...(rows.leftOut === 0 ? [] : [{ code: "rows-left-out", rows: rows.leftOut } as const]),
    ...timetableLeftOut(timetableFaults),
    ...told("no-such-column"),
    ...told("no-such-header"),
  ];
}
