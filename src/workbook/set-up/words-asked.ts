import {
  FACT_NAMES,
  type Initials,
  nearCustomers,
  ORDER_COLUMNS,
  type Orders,
  openWords,
  type Records,
  TEXT_FACTS,
  type Timetable,
} from "../../core";
import type { PairAsked, WordsAsked } from "../../wire/words";
import { namedText } from "../reading/named-text";

/** Columns whose words are asked about; a lot's name is told by what the lots are called. */
const ASKED_OF = TEXT_FACTS.filter((fact) => fact !== "fromLot");
/** As many questions of a kind at a time: the page is small, and an answer may settle others. */
const AT_ONCE = 8;

/**
 * What is to be asked of the words in a tab's cells, and of customers in the orders; and how many questions are
 * left for later.
 *
 * @param orders null where there are none
 */
export function wordsAsked(
  { records, orders }: { readonly records: Records; readonly orders: Orders | null },
  timetable: Timetable,
  initials: Initials,
): WordsAsked {
  const { methods, pairs: ofRecords } = openWords(records, timetable);
  const ofOrders = orders === null ? [] : nearCustomers(orders, records.words);
  const pairs = [
    ...ofRecords.map(
      ({ fact, rare, batches, common, others }): PairAsked => ({
        column: FACT_NAMES[fact],
        batches,
        others,
        of: "batches",
        rare: namedText(rare, fact === "grafter", initials),
        common: namedText(common, fact === "grafter", initials),
      }),
    ),
    ...ofOrders.map(
      ({ rare, orders: batches, common, others }): PairAsked => ({
        column: ORDER_COLUMNS.customer,
        batches,
        others,
        of: "orders",
        rare: namedText(rare, false, initials),
        common: namedText(common, false, initials),
      }),
    ),
  ];
  const later = (all: readonly unknown[]) => Math.max(0, all.length - AT_ONCE);
  return {
    methods: methods.slice(0, AT_ONCE),
    pairs: pairs.slice(0, AT_ONCE),
    more: later(methods) + later(pairs),
    choices: timetable.methods.map(({ name }) => name),
    columns: ASKED_OF.map((fact) => FACT_NAMES[fact]),
  };
}
