import { type ColumnTarget, FACT_NAMES, shortened, shortFacts, type Trouble } from "../core";
import * as text from "../sentences/made/check";
import * as trouble from "../sentences/made/troubles";
import { capital } from "./capital";
import { dayWords } from "./days";
import { type SentencesOf, sentenceOf } from "./sentence-of";
import { faultPlace, timetableFault, timetableLoss } from "./timetable";
import { readAsSentence, unreadWords } from "./unread";

/** A trouble in words. */
export interface TroubleWords {
  readonly trouble: string;
  readonly whatHappens: string;
  readonly whatToDo: string;
  /** In place of the cell's text. */
  readonly found?: string;
  /** In place of the column. */
  readonly column?: string;
}

type Weekday = Parameters<typeof trouble.freeWeekday>[0]["weekday"];

/** Names of batches that are said of a lot. */
const MOST_NAMED = 6;

const NO_BATCH: Readonly<Record<Extract<Trouble, { code: "no-batch" }>["as"], () => string>> = {
  heading: trouble.heading,
  note: trouble.note,
  sums: trouble.sums,
  "sums by numbers": trouble.sumsByNumbers,
};

/** What is wrong, what happens because of it, and what to do. */
export const words = (wrong: string, whatHappens: string, whatToDo: string): TroubleWords => ({
  trouble: wrong,
  whatHappens,
  whatToDo,
});
const alike = (wrong: string) => words(wrong, trouble.bothRows(), trouble.sameNameToDo());
const days = (wrong: string) => words(wrong, trouble.bothDays(), trouble.checkDays());
const line = (wrong: string, whatToDo: string) => words(wrong, trouble.lineLeftOut(), whatToDo);

/** What is wrong, what happens because of it, and what to do. */
const TROUBLES: SentencesOf<Trouble, TroubleWords> = {
  "cell-unread": ({ why }) =>
    words(capital(unreadWords(why)), trouble.cellUnreadHappens(), trouble.cellUnreadToDo()),
  "cell-read-as": ({ readAs }) =>
    words(trouble.notPlain(), readAsSentence(readAs), trouble.notPlainToDo()),
  "blanks-below": () =>
    words(trouble.blanksBelow(), trouble.blanksBelowHappens(), trouble.blanksBelowToDo()),
  "filled-from-above": (one) => ({
    ...words(
      trouble.filledFromAbove(),
      trouble.filledFromAboveHappens(),
      trouble.filledFromAboveToDo(),
    ),
    found: trouble.blankCells(one),
  }),
  "ditto-marks": (one) => ({
    ...words(trouble.dittoMarks(), trouble.dittoMarksHappens(), trouble.notPlainToDo()),
    found: trouble.dittoMarksFound(one),
  }),
  "batch-not-in-table": () =>
    words(
      trouble.batchNotInTable(),
      trouble.batchNotInTableHappens(),
      trouble.batchNotInTableToDo(),
    ),
  "batch-spelt-otherwise": (one) =>
    words(trouble.batchSpeltOtherwise(one), trouble.readAsName(one), trouble.asWritten()),
  "batch-unnamed": (one) =>
    words(trouble.batchUnnamed(), trouble.batchUnnamedHappens(one), trouble.batchUnnamedToDo()),
  "no-batch-column": (one) =>
    words(trouble.noBatchColumn(), trouble.noBatchColumnHappens(one), trouble.columnMayBeToDo()),
  "same-name": (one) => alike(trouble.sameName(one)),
  "nearly-same-name": (one) => alike(trouble.nearlySameName(one)),
  "no-such-lot": () =>
    words(trouble.noSuchLot(), trouble.noSuchLotHappens(), trouble.noSuchLotToDo()),
  "lots-in-a-circle": () =>
    words(trouble.lotsInACircle(), trouble.lotsInACircleHappens(), trouble.lotsInACircleToDo()),
  "lot-overdrawn": (one) =>
    words(overdrawn(one), trouble.lotOverdrawnHappens(), trouble.lotOverdrawnToDo()),
  "no-such-header": (one) =>
    words(trouble.noSuchHeader(one), trouble.noSuchHeaderHappens(), trouble.noSuchHeaderToDo()),
  "no-such-column": (one) =>
    words(trouble.noSuchColumn(one), trouble.columnLeftAlone(), trouble.noSuchColumnToDo()),
  "column-left": ({ column, found, holds, others: [best] }) => {
    const alone = trouble.columnLeftAlone();
    if (column === "") {
      return words(trouble.columnNoHeader({ found, holds }), alone, trouble.columnNoHeaderToDo());
    }
    return best === undefined
      ? words(trouble.columnLeft({ column, holds }), alone, trouble.columnLeftToDo())
      : words(
          trouble.columnMayBe({ column, holds, best: targetWords(best) }),
          alone,
          trouble.columnMayBeToDo(),
        );
  },
  "column-open": ({ column, readAs, others }) => {
    const name = targetWords(readAs);
    return words(
      trouble.columnOpen({ column, readAs: name, others: others.map(targetWords).join(", ") }),
      trouble.readAs({ readAs: name }),
      trouble.columnOpenToDo(),
    );
  },
  "columns-alike": (one) =>
    words(
      trouble.columnsAlike({ ...one, readAs: targetWords(one.readAs) }),
      trouble.columnsAlikeHappens(one),
      trouble.columnsAlikeToDo(),
    ),
  "line-without-batch": () => line(trouble.lineWithoutBatch(), trouble.lineWithoutBatchToDo()),
  "line-without-step": () => line(trouble.lineWithoutStep(), trouble.lineWithoutStepToDo()),
  "line-without-day": () =>
    words(trouble.lineWithoutDay(), trouble.lineWithoutDayHappens(), trouble.addDay()),
  "no-line": () => words(trouble.noLine(), trouble.rowNotRead(), text.nothingToDo()),
  "no-batch": ({ as }) =>
    words(NO_BATCH[as](), trouble.notABatchHappens(), trouble.notABatchToDo()),
  "outside-tables": () =>
    words(trouble.outsideTables(), trouble.rowNotRead(), trouble.outsideTablesToDo()),
  "no-such-method": ({ near }) =>
    words(
      near === null ? trouble.noSuchMethod() : trouble.noSuchMethodNear({ near }),
      trouble.noSuchMethodHappens(),
      trouble.noSuchMethodToDo(),
    ),
  "several-methods": (one) =>
    words(trouble.severalMethods(one), trouble.noSuchMethodHappens(), trouble.severalMethodsToDo()),
  "near-alike": ({ name, ...counts }) =>
    words(
      trouble.nearAlike({ ...counts, name: shortened(name) }),
      trouble.nearAlikeHappens(counts),
      trouble.nearAlikeToDo(),
    ),
  "count-rises": (one) =>
    words(trouble.countRises(one), trouble.bothCounts(), trouble.checkCounts()),
  "before-step": ({ step, stepDay }) => days(trouble.beforeStep({ step, day: dayWords(stepDay) })),
  "too-soon": (one) => days(trouble.tooSoon(one)),
  "day-swapped": ({ day, against, againstDay, ...one }) => {
    const fits = dayWords(one.fits);
    const other = { step: against, stepDay: dayWords(againstDay) };
    const wrong = trouble.daySwapped({ day: dayWords(day), fits, ...other });
    return words(wrong, trouble.bothDays(), trouble.daySwappedToDo({ fits }));
  },
  "free-weekday": ({ weekday, others }) =>
    words(
      trouble.freeWeekday({ weekday: String(weekday) as Weekday, others }),
      trouble.dayUsed(),
      trouble.ifSlip(),
    ),
  "closed-standing": (one) =>
    words(trouble.closedStanding(one), trouble.closedHappens(), trouble.closedToDo()),
  "count-missing": () =>
    words(trouble.countMissing(), trouble.countMissingHappens(), trouble.countMissingToDo()),
  "release-missed": (one) =>
    words(trouble.releaseMissed(one), trouble.releaseHappens(), trouble.releaseToDo()),
  "scions-cut": (one) =>
    days(trouble.scionsCut({ days: Math.abs(one.days), when: one.days < 0 ? "after" : "before" })),
  "after-as-of": ({ asOf }) =>
    words(trouble.afterAsOf({ asOf: dayWords(asOf) }), trouble.planned(), trouble.ifSlip()),
  timetable: ({ fault }) => ({
    ...words(capital(timetableFault(fault)), timetableLoss(fault), trouble.correctTimetable()),
    column: faultPlace(fault),
  }),
};

/** A trouble in words, with what the person sees at its place. */
export function troubleWords(one: Trouble): Required<TroubleWords> {
  return { found: one.found, column: one.column, ...sentenceOf(TROUBLES, shortFacts(one)) };
}

function overdrawn(one: Extract<Trouble, { code: "lot-overdrawn" }>): string {
  const { batches } = one;
  if (batches.length === 0) return trouble.lotOverdrawn(one);
  const more = batches.length > MOST_NAMED ? ", …" : "";
  const names = batches.slice(0, MOST_NAMED).map(shortened).join(", ") + more;
  return trouble.lotOverdrawnBy({ ...one, batches: names });
}

/** What a column may be read as, within a sentence. */
function targetWords(target: ColumnTarget): string {
  if (target.kind !== "step") return FACT_NAMES[target.fact];
  const { key: step, what } = target;
  return what === "day" ? trouble.dayOfStep({ step }) : trouble.plantsAtStep({ step });
}
