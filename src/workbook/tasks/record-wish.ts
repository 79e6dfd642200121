import type { RecordRequest } from "../../wire/writing";
import type { LoggedCell } from "../writing/write-log";

/** A request that may leave the day open: then the day that stands there, else the as-of day. */
export type RecordWish = Omit<RecordRequest, "day" | "sure"> & { readonly day: string | null };

/** What the one who asks has written before, which may be corrected without a question. */
export interface OwnWrites {
  wroteCell(cell: { readonly row: number; readonly column: number }): boolean;
  /** Whether the log alone holds that already. */
  keeps(cell: LoggedCell): boolean;
}
