import { askedSentence, faultSentence } from "../../src/wording/writing";
import type { Asked, WritingFault } from "../../src/wording/writing-codes";
import {
  asks,
  type InRecords,
  notTakenBack,
  notWritten,
  notYet,
  takenBack,
  there,
  written,
} from "../../src/workbook/due/row-state";

const NOTHING_KEPT = { memory: { writes: [], asked: "" } };
const of = (cells: readonly string[]): InRecords => ({ cells, missesCount: false, inLog: [] });

/** What a row of the due list says of itself. */
export const writtenText = (...cells: readonly string[]) => written(of(cells), []).text;
export const thereText = (...cells: readonly string[]) => there(of(cells)).text;
export const takenBackText = (...cells: readonly string[]) => takenBack(cells).text;
export const asksText = (...asked: readonly Asked[]) => asks(asked, "", NOTHING_KEPT).text;
export const notYetText = () => notYet(NOTHING_KEPT).text;
export const notWrittenText = (fault: WritingFault) =>
  notWritten(faultSentence(fault), NOTHING_KEPT).text;
export const notTakenBackText = (ask: Asked) => notTakenBack(askedSentence(ask), NOTHING_KEPT).text;
