import { FACT_NAMES, type Initials, openWords, type Records, type Timetable } from "../../core";
import type { WordsAsked } from "../../wire/words";
import { namedText } from "../reading/named-text";

const ASKED_OF = [
  "variety",
  "rootstock",
  "crop",
  "method",
  "place",
  "grafter",
  "scionSource",
] as const;
/** As many questions of a kind at a time: the page is small, and an answer may settle others. */
const AT_ONCE = 8;

/** What is to be asked of the words in a tab's cells, and how many questions are left for later. */
export function wordsAsked(records: Records, timetable: Timetable, initials: Initials): WordsAsked {
  const { methods, pairs } = openWords(records, timetable);
  const later = (all: readonly unknown[]) => Math.max(0, all.length - AT_ONCE);
  return {
    methods: methods.slice(0, AT_ONCE),
    pairs: pairs.slice(0, AT_ONCE).map(({ fact, rare, batches, common, others }) => ({
      column: FACT_NAMES[fact],
      rare: namedText(rare, fact === "grafter", initials),
      batches,
      common: namedText(common, fact === "grafter", initials),
      others,
    })),
    more: later(methods) + later(pairs),
    choices: timetable.methods.map(({ name }) => name),
    columns: ASKED_OF.map((fact) => FACT_NAMES[fact]),
  };
}
