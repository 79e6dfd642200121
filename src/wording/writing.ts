import { shortened } from "../core";
import {
  afterToday,
  beforeStep,
  beforeToday,
  blankSince,
  changedSince,
  columnLacks,
  filledSince,
  holdsAlready,
  holdsTooMuch,
  lineAlready,
  lineCounted,
  lineUndated,
  moreThanBefore,
  nameAlready,
  newColumn,
  notCounted,
  tooLong,
} from "../sentences/made/writing-asked";
import {
  busy,
  changed,
  columnsGone,
  doneAnyway,
  filled,
  holdsFormula,
  lineNotRead,
  linesAbove,
  moved,
  noBatch,
  noBox,
  noCells,
  noColumn,
  noOrders,
  noStep,
  notACount,
  notInLog,
  notOurs,
  notPutBack,
  noWorkbook,
  orderGone,
  rowsAlike,
  swallowed,
  tabMissing,
  tabThere,
  taskGone,
  thereAlready,
  twoBatches,
  unreadable,
} from "../sentences/made/writing-faults";
import { type SentencesOf, sentenceOf } from "./sentence-of";
import type { Asked, MeanwhileFault, WritingFault } from "./writing-codes";

const MEANWHILE: SentencesOf<MeanwhileFault> = { changed, filled, holdsFormula, moved, swallowed };

const FAULTS: SentencesOf<Exclude<WritingFault, { code: "said" }>> = {
  ...MEANWHILE,
  busy,
  columnsGone,
  doneAnyway,
  lineNotRead,
  linesAbove,
  noBatch,
  noBox,
  noCells,
  noColumn,
  noOrders,
  noStep,
  notACount,
  notInLog,
  notOurs,
  notPutBack,
  noWorkbook,
  orderGone,
  rowsAlike,
  tabMissing,
  tabThere,
  taskGone,
  thereAlready,
  twoBatches,
  unreadable,
};

const ASKED: SentencesOf<Asked> = {
  ...MEANWHILE,
  afterToday,
  beforeStep,
  beforeToday,
  blankSince,
  changedSince,
  columnLacks,
  filledSince,
  holdsAlready,
  holdsTooMuch,
  lineAlready,
  lineCounted,
  lineUndated,
  moreThanBefore,
  nameAlready,
  newColumn,
  notCounted,
  tooLong,
};

/** Why something could not be written or made; without a full stop, since more may follow. */
export function faultSentence(fault: WritingFault): string {
  return fault.code === "said" ? fault.sentence : sentenceOf(FAULTS, withShortTexts(fault));
}

/** What is asked before something is written, as a whole sentence. */
export function askedSentence(question: Asked): string {
  return sentenceOf(ASKED, withShortTexts(question));
}

/** A sentence repeats a line of somebody's text at most, but for what the spreadsheet says. */
function withShortTexts<Facts extends Asked | WritingFault>(facts: Facts): Facts {
  const short = (fact: unknown): unknown =>
    typeof fact === "string" ? shortened(fact) : Array.isArray(fact) ? fact.map(short) : fact;
  const entries = Object.entries(facts).map(([name, fact]) => [
    name,
    name === "because" ? fact : short(fact),
  ]);
  return Object.fromEntries(entries) as Facts;
}
