import { InputError, type InputFault, nameList, shortened } from "../core";
import * as orders from "../sentences/made/order-faults";
import * as tables from "../sentences/made/table-faults";
import * as takes from "../sentences/made/take-faults";
import { type SentencesOf, sentenceOf } from "./sentence-of";

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
  "no-such-column": ({ argument, name, known }) =>
    takes.noSuchColumn({ argument, name: shortened(name), known: nameList(known) }),
  "compared-and-evened": ({ argument, name }) =>
    takes.comparedAndEvened({ argument, name: shortened(name) }),
  "no-grafts": takes.noGrafts,
  "no-takes": takes.noTakes,
  "no-such-period": ({ found }) => takes.noSuchPeriod({ found: shortened(found) }),
  "more-taken-than-grafted": takes.moreTakenThanGrafted,
};

/** What went wrong, as a person is told. */
export function errorSentence(error: unknown): string {
  if (error instanceof InputError && error.fault !== null) return sentenceOf(FAULTS, error.fault);
  return error instanceof Error ? error.message : String(error);
}
