import type { DueMemory } from "./due-memory";
import type { DueRow } from "./due-rows";

/**
 * What a row of the due tab says of itself. The first sign also stands beside the box, where a phone
 * shows it.
 */
export interface RowState {
  readonly text: string;
  readonly memory: DueMemory;
}

const SIGN = { written: "✓", asks: "?", not: "!", waits: "…", back: "↶" } as const;

const ANSWER = 'Tick "Yes, write it" if it is.';

export function written(cells: string, more: string, writes: readonly string[]): RowState {
  const text = `${SIGN.written} written: ${cells}${more}`;
  return { text, memory: { writes, asked: "" } };
}

/** In the records, but not by this row. */
export function there(cells: string, more: string): RowState {
  return { text: `${SIGN.written} in the records already: ${cells}${more}`, memory: NOTHING };
}

export function notWritten(why: string, { memory }: Pick<DueRow, "memory">): RowState {
  return { text: `${SIGN.not} not written: ${why}`, memory: { ...memory, asked: "" } };
}

export function asks(
  questions: readonly string[],
  mark: string,
  { memory }: Pick<DueRow, "memory">,
): RowState {
  const text = `${SIGN.asks} not written: ${[...questions, ANSWER].join(" ")}`;
  return { text, memory: { ...memory, asked: mark } };
}

export function notYet(why: string, { memory }: Pick<DueRow, "memory">): RowState {
  return { text: `${SIGN.waits} not yet written: ${why}`, memory };
}

export function takenBack(cells: string): RowState {
  return { text: `${SIGN.back} taken back: ${cells}`, memory: NOTHING };
}

export function notTakenBack(why: string, { memory }: Pick<DueRow, "memory">): RowState {
  return { text: `${SIGN.not} not taken back: ${why}`, memory: { ...memory, asked: "" } };
}

/** Of a row whose box was cleared before it wrote anything; null where nothing needs to be said. */
export function cleared({ state, memory }: DueRow): RowState | null {
  const sign = state.slice(0, 1);
  if (sign === SIGN.written) {
    return {
      text: `${SIGN.not} still in the records: this list did not write it`,
      memory: NOTHING,
    };
  }
  const isOver = sign === SIGN.asks || sign === SIGN.waits || state.startsWith(NOT_WRITTEN);
  return isOver || memory.asked !== "" ? { text: "", memory: NOTHING } : null;
}

const NOT_WRITTEN = `${SIGN.not} not written`;

/** Whether a row says that it is in the records. */
export function saysWritten(text: string): boolean {
  return text.startsWith(SIGN.written);
}

const NOTHING: DueMemory = { writes: [], asked: "" };
