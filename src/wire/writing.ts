import type { Asked } from "../wording/writing-codes";
import type { CallShape } from "./call-shape";

/** What the sidebar asks to have written into the person's own tabs or taken back, and what it is told. */

/** A cell's value as it may pass between script and page; a day is ISO text. */
export type PlainValue = string | number | boolean | null;

export interface RecordRequest {
  readonly batch: string;
  readonly task: string;
  readonly day: string;
  /** Null where not counted; never 0 in its place. */
  readonly count: number | null;
  readonly who: string;
  readonly note: string;
  /** That it is not to be done, instead of done: what stands for its day says so, and no count. */
  readonly notDone?: boolean;
  /**
   * Ids of the questions that the person has seen and answered with "write anyway"; empty at first. A question that came up since is asked again, so nobody's edit is overwritten unseen.
   */
  readonly sure: readonly string[];
}

export interface RecordAnswer {
  /** Empty when something was asked. */
  readonly written: readonly CellWritten[];
  /** Not empty only if nothing was written. */
  readonly asked: readonly Question[];
  /** What takes this writing back; null when nothing was written. */
  readonly logId: string | null;
}

export interface CellWritten {
  /** Tab and cell, as "Records!N12"; null where the write log alone holds it. */
  readonly where: string | null;
  readonly header: string;
  readonly value: PlainValue;
}

export interface Question {
  /** The same for the same question with the same facts. */
  readonly id: string;
  readonly ask: Asked;
  /** What stands in the cell now; null for a blank cell or where no cell is meant. */
  readonly stands: PlainValue;
  /** What would stand there. */
  readonly would: PlainValue;
}

export interface TakeBackRequest {
  readonly logId: string;
}

export interface LastWritesAnswer {
  /** The newest first. */
  readonly writes: readonly LastWrite[];
  /** Whether the log tab holds older ones. */
  readonly isMore: boolean;
}

/** A write as the log has it, with all that takes it back. */
export interface LastWrite {
  readonly logId: string;
  readonly task: string;
  /** The batch, or the order. */
  readonly about: string;
  /** The minute, as "2026-11-25 09:00". */
  readonly when: string;
  /** As it was typed; empty where nobody was named. */
  readonly who: string;
  /** "not known" where it was cut off and could not be found again. */
  readonly state: "written" | "taken back" | "not known";
  readonly cells: readonly CellWritten[];
}

export interface TakeBackAnswer {
  readonly restored: readonly CellWritten[];
  /** Cells left as they are, because someone changed them since. */
  readonly asked: readonly Question[];
}

export interface WritingCalls {
  readonly sidebarRecord: CallShape<RecordRequest, RecordAnswer>;
  readonly sidebarTakeBack: CallShape<TakeBackRequest, TakeBackAnswer>;
  readonly sidebarLastWrites: CallShape<null, LastWritesAnswer>;
}
