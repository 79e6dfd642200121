import {
  type Answer,
  BALANCE_COLUMNS,
  type Balances,
  type BatchStages,
  type BatchSteps,
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

/** Plants ready: a row a month and variety, and one of all together. */
export function readyTable({ rows, remarks }: Omit<ReadyPlants, "batches">): Answer {
  return tableOf({
    columns: READY_COLUMNS,
    headers: headers(),
    rows: rows.map(({ variety, ...row }) => ({
      cells: { ...row, variety: variety === null ? text.all() : groupText(variety) },
    })),
    remark: recordsRemarks(remarks, "cell"),
  });
}

/** What was forecast and how it held: one row per batch, and one that counts the ranges that came true. */
export function lookbackTable({ rows, remarks }: Lookback): Answer {
  const word = (held: boolean | null) => (held === null ? null : held ? text.yes() : text.no());
  const counted = (held: readonly (boolean | null)[]) => {
    const known = held.filter((one) => one !== null);
    const all = known.length;
    return all === 0 ? null : text.heldOf({ held: known.filter(Boolean).length, all });
  };
  const last = {
    batch: rows.length === 0 ? text.noneHeld() : text.held(),
    readyFrom: null,
    readyBy: null,
    wasReady: null,
    fewest: null,
    most: null,
    were: null,
    dayHeld: counted(rows.map(({ dayHeld }) => dayHeld)),
    countHeld: counted(rows.map(({ countHeld }) => countHeld)),
  };
  return tableOf({
    columns: LOOKBACK_COLUMNS,
    headers: headers(),
    rows: [
      ...rows.map((row) => ({
        cells: { ...row, dayHeld: word(row.dayHeld), countHeld: word(row.countHeld) },
      })),
      { cells: last },
    ],
    remark: recordsRemarks(remarks, "cell"),
  });
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
