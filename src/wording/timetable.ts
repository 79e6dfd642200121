import {
  type Answer,
  shortened,
  shortFacts,
  TIMETABLE_COLUMNS,
  TIMETABLE_HEADER,
  type TimetableFault,
  type TimetableField,
  type TimetableRow,
} from "../core";
import * as text from "../sentences/made/timetable";
import { type SentencesOf, sentenceOf, type Where } from "./sentence-of";

/** A timetable as a table that is read back as it was. */
export function timetableTable(rows: readonly TimetableRow[]): Answer {
  const fields = Object.keys(TIMETABLE_HEADER) as readonly TimetableField[];
  return {
    columns: fields.map((field) => ({
      name: TIMETABLE_HEADER[field],
      kind: TIMETABLE_COLUMNS[field],
    })),
    rows: rows.map((row) => fields.map((field) => row[field])),
    remark: null,
  };
}

const FAULTS: SentencesOf<TimetableFault> = {
  "no-number": text.noNumber,
  "step-unnamed": text.stepUnnamed,
  "no-usual-day": text.noUsualDay,
  "days-must-rise": text.daysMustRise,
  "days-not-whole": text.daysNotWhole,
  "kept-out-of-range": text.keptOutOfRange,
  "rate-not-above-0": text.rateNotAbove0,
  "needs-unreadable": text.needsUnreadable,
  "no-such-kind": text.noSuchKind,
  "before-parent": text.beforeParent,
  "too-many-days": text.tooManyDays,
  "same-step": text.sameStep,
  "no-such-step": text.noSuchStep,
  "after-left-out": text.afterLeftOut,
  "counted-from-beside": text.countedFromBeside,
  "care-without-start": text.careWithoutStart,
  circle: ({ steps }) => text.afterIsCircle({ steps: circleWords(steps) }),
};

function circleWords(steps: readonly string[]): string {
  const [first = "", ...others] = [...steps, steps[0] ?? ""].map(shortened);
  return others.reduce((step, after) => text.stepAfter({ step, after }), first);
}

/** What is wrong in a cell of a timetable, without saying in which. */
export function timetableFault(fault: TimetableFault): string {
  return sentenceOf(FAULTS, shortFacts(fault));
}

/** The cell of a fault, as the name of a place. */
export function faultPlace({ row, column }: TimetableFault): string {
  return text.columnAt({ row, column: TIMETABLE_HEADER[column] });
}

/** The first fault of a timetable with its cell, and that there are more. @param more how many, 0 or more */
export function faultSentence(fault: TimetableFault, more: number, where: Where): string {
  const at = text.at({
    row: fault.row,
    column: TIMETABLE_HEADER[fault.column],
    trouble: timetableFault(fault),
  });
  if (more === 0) return at;
  return where === "cell" ? text.moreOfCell({ at, more }) : text.moreOfPage({ at, more });
}

/** Faults that are said in one remark; of more the number. */
const MOST_SAID = 3;

const LEFT_OUT = {
  cell: text.cellLeftOut,
  row: text.rowLeftOut,
  method: text.methodLeftOut,
} as const;

/** What is left out because of a fault, in a cell of a list of troubles. */
export function timetableLoss({ leftOut }: TimetableFault): string {
  return LEFT_OUT[leftOut]();
}

/** What of a timetable is left out, each with its place and its reason. */
export function timetableRemark(faults: readonly TimetableFault[], where: Where): string {
  const said = faults.slice(0, MOST_SAID).map((fault) =>
    text.placeOf({
      row: fault.row,
      column: TIMETABLE_HEADER[fault.column],
      leftOut: fault.leftOut,
      trouble: timetableFault(fault),
    }),
  );
  const more = faults.length - said.length;
  const places = more === 0 ? said : [...said, text.morePlaces({ more })];
  return where === "cell" ? text.leftOutOfCell({ places }) : text.leftOutOfPage({ places });
}
