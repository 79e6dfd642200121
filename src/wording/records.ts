import { type LeftOut, shortened, shortFacts } from "../core";
import * as text from "../sentences/made/records";
import { type SentencesOf, sentenceOf, together, type Where } from "./sentence-of";
import { timetableRemark } from "./timetable";

/** Names of batches that are said; of more their number, and where all stand. */
const MOST_NAMED = 10;

/** Remarks on records, which those of every capability hold. */
export const RECORDS_REMARKS: SentencesOf<LeftOut> = {
  "care-today": ({ places, tasks, cautions, batches }) => {
    const facts = { tasks: tasks.map(shortened), batches };
    const named = places.filter((place) => place !== "").map(shortened);
    const said =
      named.length === 0 ? text.careToday(facts) : text.careTodayAt({ places: named, ...facts });
    return [said, ...cautions].join(" ");
  },
  "general-shares": ({ shares }) =>
    text.generalShares({
      shares: shares.map(({ mean, ...one }) =>
        text.generalShare({ ...one, mean: mean ?? one.kept, own: mean === null ? "no" : "yes" }),
      ),
    }),
  "job-never-recorded": (facts) => text.jobNeverRecorded(facts),
  "looks-hidden": text.looksHidden,
  "no-such-columns": ({ columns }, where) => {
    const told = columns.map((one) => text.toldAs(shortFacts(one)));
    return where === "cell"
      ? text.noSuchColumnsOfCell({ told })
      : text.noSuchColumnsOfPage({ told });
  },
  "no-such-headers": ({ columns }) =>
    text.noSuchHeaders({ told: columns.map((one) => text.toldAs(shortFacts(one))) }),
  "no-such-method": ({ batches }, where) =>
    text.noSuchMethod({ batches: someBatches(batches, where) }),
  "rows-left-out": (facts, where) =>
    where === "cell" ? text.rowsLeftOutOfCell(facts) : text.rowsLeftOutOfPage(facts),
  "timetable-left-out": ({ faults }, where) => timetableRemark(faults, where),
  "several-methods": ({ batches }, where) =>
    text.severalMethods({ batches: someBatches(batches, where) }),
};

/** What was left out of records; null where nothing was. */
export function recordsRemarks(remarks: readonly LeftOut[], where: Where): string | null {
  const isAsked = remarks.some(
    ({ code }) => code === "no-such-method" || code === "several-methods",
  );
  return together([
    ...remarks.map((one) => sentenceOf(RECORDS_REMARKS, one, where)),
    ...(isAsked && where === "page" ? [text.methodsAsked()] : []),
  ]);
}

/** Names of batches for a sentence: ten at most, then how many more, and where all stand. */
export function someBatches(names: readonly string[], where: Where): readonly string[] {
  const more = names.length - MOST_NAMED;
  if (more <= 0) return names;
  const rest = where === "cell" ? text.moreOfCell : text.moreOfPage;
  return [...names.slice(0, MOST_NAMED), rest({ batches: more })];
}
