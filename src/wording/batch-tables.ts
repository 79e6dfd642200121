import {
  type Answer,
  BALANCE_COLUMNS,
  type Balances,
  type BatchStages,
  type BatchSteps,
  blankRow,
  DUE_COLUMNS,
  type LeftOut,
  LOOKBACK_COLUMNS,
  type Lookback,
  READY_COLUMNS,
  type ReadyPlants,
  STAGE_COLUMNS,
  STEP_COLUMNS,
  type Task,
} from "../core";
import { headers } from "../sentences/made/batch-columns";
import * as text from "../sentences/made/batches";
import { BALANCE_REMARKS, DUE_WORDS, STAGE_REMARKS } from "./batches";
import { recordsRemarks } from "./records";
import { sentenceOf, together } from "./sentence-of";
import { tableOf } from "./table-of";
import { groupText } from "./takes";

/** Where each open batch stands: a row a batch. */
export function stagesTable({ rows, remarks }: BatchStages): Answer {
  return tableOf({
    columns: STAGE_COLUMNS,
    headers: headers(),
    rows: rows.map((row) => {
      const remark = row.remark === null ? null : sentenceOf(STAGE_REMARKS, row.remark);
      return { cells: { ...row, remark } };
    }),
    remark: recordsRemarks(remarks, "cell"),
  });
}

/** Every step of every batch: a row a step. */
export function stepsTable({ rows, remarks }: BatchSteps): Answer {
  return tableOf({
    columns: STEP_COLUMNS,
    headers: headers(),
    rows: rows.map((cells) => ({ cells })),
    remark: recordsRemarks(remarks, "cell"),
  });
}

/** Plants ready now and by month: a row a month and variety, one of all together, and all months at the end. */
export function readyTable({ rows, remarks }: Omit<ReadyPlants, "batches">): Answer {
  return tableOf({
    columns: READY_COLUMNS,
    headers: headers(),
    rows: rows.map(({ month, variety, ...row }) => ({
      cells: {
        ...row,
        month: readyWhen(month),
        variety: variety === null ? text.all() : groupText(variety),
      },
    })),
    remark: recordsRemarks(remarks, "cell"),
  });
}

/** When plants of a row are ready; a month stays as it is. */
export function readyWhen(month: string): string {
  return month === "now" ? text.readyNow() : month === "all" ? text.allMonths() : month;
}

/**
 * What was forecast and how it held: one row per batch; one that counts the ranges that came true, what cannot be
 * judged, and how a plain rule did.
 */
export function lookbackTable({ rows, remarks, ...tally }: Lookback): Answer {
  const word = (held: boolean | null) => (held === null ? null : held ? text.yes() : text.no());
  const counted = (held: readonly (boolean | null)[]) => {
    const known = held.filter((one) => one !== null);
    return heldOf({ held: known.filter(Boolean).length, all: known.length });
  };
  const words = (batch: string) => ({ ...blankRow(LOOKBACK_COLUMNS), batch });
  const { notYet, goneOn, undated, plain } = tally;
  return tableOf({
    columns: LOOKBACK_COLUMNS,
    headers: headers(),
    rows: [
      ...rows.map((row) => ({
        ...row,
        dayHeld: word(row.dayHeld),
        countHeld: word(row.countHeld),
      })),
      {
        ...words(rows.length === 0 ? text.noneHeld() : text.held()),
        dayHeld: counted(rows.map(({ dayHeld }) => dayHeld)),
        countHeld: counted(rows.map(({ countHeld }) => countHeld)),
      },
      ...(undated === 0 ? [] : [words(text.closedUndated({ batches: undated }))]),
      ...(goneOn === 0 ? [] : [words(text.wentOn({ batches: goneOn }))]),
      ...(notYet === 0 ? [] : [words(text.notJudgedYet({ batches: notYet }))]),
      ...(rows.length === 0
        ? []
        : [
            {
              ...words(
                text.plainRule({
                  days: plain.days?.did ?? "none",
                  plants: plain.plants?.did ?? "none",
                }),
              ),
              dayHeld: plain.days === null ? null : heldOf(plain.days),
              countHeld: plain.plants === null ? null : heldOf(plain.plants),
            },
          ]),
    ].map((cells) => ({ cells })),
    remark: recordsRemarks(remarks, "cell"),
  });
}

function heldOf({ held, all }: { readonly held: number; readonly all: number }): string | null {
  return all === 0 ? null : text.heldOf({ held, all });
}

/** What is to be done: a row a task. */
export function dueTable(due: {
  readonly rows: readonly Task[];
  readonly remarks: readonly LeftOut[];
}): Answer {
  return tableOf({
    columns: DUE_COLUMNS,
    headers: headers(),
    rows: due.rows.map(
      ({ step, batch, place, plants, isEstimate, doOn, from, by, status, daysLate, hours }) => ({
        cells: {
          doOn,
          task: step.name,
          batch,
          place: place || null,
          plants,
          from,
          by,
          status: DUE_WORDS[status](),
          daysLate,
          hours: hours === null ? null : Math.round(hours * 10) / 10,
          caution: step.caution || null,
          plantsAre: plants === null ? null : isEstimate ? text.about() : text.counted(),
        },
      }),
    ),
    remark: recordsRemarks(due.remarks, "cell"),
  });
}

/** Where the plants of each batch went: a row a batch. */
export function balanceTable({ rows, remarks }: Balances): Answer {
  return tableOf({
    columns: BALANCE_COLUMNS,
    headers: headers(),
    rows: rows.map((row) => ({
      cells: {
        ...row,
        remarks: together(row.remarks.map((one) => sentenceOf(BALANCE_REMARKS, one))),
      },
    })),
    remark: recordsRemarks(remarks, "cell"),
  });
}
