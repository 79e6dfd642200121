import {
  type Cell,
  cellText,
  errorShown,
  InputError,
  type InputFault,
  isBlank,
  nameList,
  quoted,
  shortFacts,
  TOLD_AS,
} from "../core";
import * as text from "../sentences/made/argument-faults";
import * as orders from "../sentences/made/order-faults";
import * as tables from "../sentences/made/table-faults";
import * as takes from "../sentences/made/take-faults";
import { type SentencesOf, sentenceOf, type Where } from "./sentence-of";
import { faultSentence } from "./timetable";
import { unreadWords } from "./unread";

/** What a caller got wrong, each as one sentence without its full stop, since more may follow. */
const FAULTS: SentencesOf<InputFault> = {
  "no-orders-header": ({ start }) =>
    orders.noHeader({ start: start === null ? orders.blankCell() : orders.quoted({ start }) }),
  "no-harvest-months": orders.noHarvest,
  "several-harvests": ({ places }) => orders.severalHarvests({ places: String(places) }),
  "no-header-row": tables.noHeaderRow,
  "row-not-ready": ({ argument, row, shown }) =>
    shown === null
      ? tables.rowLoading({ argument, row: String(row) })
      : tables.rowShows({ argument, row: String(row), shown }),
  "days-out-of-range": ({ most, found }) =>
    tables.daysOutOfRange({ most: String(most), found: String(found) }),
  "argument-missing": text.missing,
  "argument-unreadable": ({ argument, wanted, found }) =>
    text.notWanted({ argument, wanted, found: cellWords(found) }),
  "level-out-of-range": ({ argument, found }) =>
    text.levelOutOfRange({ argument, found: cellWords(found) }),
  "wanted-out-of-range": text.wantedOutOfRange,
  "below-one-day": ({ argument, found }) => text.belowOneDay({ argument, found: String(found) }),
  "not-a-count": ({ argument, why }) => text.notACount({ argument, why: unreadWords(why) }),
  "no-plants": text.noPlants,
  "sizes-differ": ({ taken, grafted }) =>
    text.sizesDiffer({ taken: taken.join(" × "), grafted: grafted.join(" × ") }),
  "not-ready-yet": (fault) => {
    const cell = placeOf(fault);
    const { shown } = fault;
    return shown === null ? text.isLoading({ cell }) : text.shows({ cell, shown });
  },
  "no-header": ({ begins }) => text.noHeader({ begins: beginningOf(begins) }),
  "columns-unreadable": ({ name, header }) =>
    text.columnsUnreadable({ name: cellWords(name), header: cellWords(header) }),
  "told-as-unknown": ({ word, found }) =>
    text.toldAsUnknown({ word, found: cellWords(found), kinds: Object.values(TOLD_AS) }),
  "no-steps": text.noSteps,
  "unknown-method": ({ name, known }) => text.unknownMethod({ name, known: nameList(known) }),
  "methods-fit": ({ name, fitting }) => text.methodsFit({ name, methods: nameList(fitting) }),
  "timetable-unusable": ({ fault, more }, where) => faultSentence(fault, more, where),
  "inspections-differ": text.inspectionsDiffer,
  "day-below-zero": text.dayBelowZero,
  "days-not-rising": text.daysNotRising,
  "nothing-sown": text.nothingSown,
  "more-up-than-sown": text.moreUpThanSown,
  "no-such-column": ({ argument, name, known }) =>
    takes.noSuchColumn({ argument, name, known: nameList(known) }),
  "compared-and-evened": takes.comparedAndEvened,
  "no-grafts": takes.noGrafts,
  "no-takes": takes.noTakes,
  "no-such-period": takes.noSuchPeriod,
  "more-taken-than-grafted": takes.moreTakenThanGrafted,
};

/** What went wrong, as a person is told. */
export function errorSentence(error: unknown, where: Where = "cell"): string {
  if (error instanceof InputError) {
    return sentenceOf(FAULTS, shortFacts(error.fault), where);
  }
  return error instanceof Error ? error.message : String(error);
}

function placeOf({
  argument,
  row,
  column,
}: Extract<InputFault, { code: "not-ready-yet" }>): string {
  if (row === null || column === null) return argument;
  return text.cellInColumn({ argument, row, column });
}

/** A cell as it was found, a text in quotation marks. */
function cellWords(cell: Cell): string {
  return typeof cell === "string" ? quoted(cell) : cellText(cell);
}

/** What a range begins with. */
function beginningOf(cell: Cell): string {
  return isBlank(cell) ? text.aBlankCell() : (errorShown(cell) ?? quoted(cellText(cell)));
}
