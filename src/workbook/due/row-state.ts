import * as text from "../../sentences/made/due-rows";
import { askedSentence } from "../../wording/writing";
import type { Asked, KeptFact } from "../../wording/writing-codes";
import { OLDER_STILL, SIGNS } from "../host/mark";
import type { DueMemory } from "./due-memory";
import type { DueRow } from "./due-rows";

/** How a row of the due tab stands; its cell begins with the code's sign. */
export type RowCode = keyof typeof SIGNS;

/** What a row of the due tab says of itself. */
export interface RowState {
  /** Null where nothing is to be said. */
  readonly code: RowCode | null;
  readonly text: string;
  readonly memory: DueMemory;
}

/** The code of what stands in a row; null where nothing of ours does. */
export function rowCode(state: string): RowCode | null {
  if (state.startsWith(SIGNS.still) || state.startsWith(OLDER_STILL)) return "still";
  const codes = Object.keys(SIGNS) as RowCode[];
  return codes.find((code) => state.startsWith(SIGNS[code])) ?? null;
}

/** What a row has to do with, of which it says where it stands. */
export interface InRecords {
  readonly cells: readonly string[];
  /** Whether a count could be added. */
  readonly missesCount: boolean;
  /** What the log alone holds. */
  readonly inLog: readonly KeptFact[];
}

export function written(where: InRecords, writes: readonly string[]): RowState {
  return said("written", placesOf(text.written, where), { writes, asked: "" });
}

/** In the records, but not by this row. */
export function there(where: InRecords): RowState {
  return said("written", placesOf(text.there, where), NOTHING);
}

export function notWritten(why: string, { memory }: Pick<DueRow, "memory">): RowState {
  return said("refused", text.notWritten({ why }), { ...memory, asked: "" });
}

export function asks(
  questions: readonly Asked[],
  mark: string,
  { memory }: Pick<DueRow, "memory">,
): RowState {
  const asked = questions.map(askedSentence).join(" ");
  return said("asks", text.asks({ asked }), { ...memory, asked: mark });
}

/** Another edit is being written. */
export function notYet({ memory }: Pick<DueRow, "memory">): RowState {
  return said("waits", text.waits(), memory);
}

/** @param cells none where it was not there any more */
export function takenBack(cells: readonly string[]): RowState {
  const words =
    cells.length === 0 ? text.goneAlready() : text.takenBack({ cells: cells.join(", ") });
  return said("takenBack", words, NOTHING);
}

export function notTakenBack(why: string, { memory }: Pick<DueRow, "memory">): RowState {
  return said("refused", text.notTakenBack({ why }), { ...memory, asked: "" });
}

/** Of a row whose box was cleared before it wrote anything; null where nothing needs to be said. */
export function cleared({ state, memory }: DueRow): RowState | null {
  const code = rowCode(state);
  if (code === "written") return said("still", text.still(), NOTHING);
  const isOver = code === "asks" || code === "waits" || code === "refused";
  return isOver || memory.asked !== "" ? { code: null, text: "", memory: NOTHING } : null;
}

/** Whether a row says that it is in the records. */
export function saysWritten(state: string): boolean {
  return rowCode(state) === "written";
}

function said(code: RowCode, words: string, memory: DueMemory): RowState {
  return { code, text: `${SIGNS[code]} ${words}`, memory };
}

function placesOf(
  sentence: (facts: { readonly cells: string }) => string,
  { cells, missesCount, inLog }: InRecords,
): string {
  const names = { count: text.nameCount, note: text.nameNote };
  return [
    sentence({ cells: cells.join(", ") }),
    ...(missesCount ? [text.countBlank()] : []),
    ...(inLog.length > 0 ? [text.inLogOnly({ what: inLog.map((one) => names[one]()) })] : []),
  ].join(". ");
}

const NOTHING: DueMemory = { writes: [], asked: "" };
