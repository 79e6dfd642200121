import { type CivilDay, sentenceDay, shortened } from "../core";
import type { OwnWrites, RecordWish } from "./record-task";
import { plainText, type RecordsNow } from "./records-tab";
import { LONGEST_TEXT } from "./safe-text";
import type { Question } from "./sidebar-calls";
import type { CellWrite } from "./table-write";
import type { TaskTarget } from "./task-target";
import type { LoggedCell } from "./write-log";

function plainQuestion(question: string): Question {
  return { question, stands: null, would: null };
}

/**
 * What can hardly be meant; the person is asked.
 *
 * @throws Error when the count is none
 */
export function doubtsAbout(
  now: RecordsNow,
  {
    target: { before, earlierDay, stepName, secondLine },
    request: { count, batch, note, who },
    day,
  }: { readonly target: TaskTarget; readonly request: RecordWish; readonly day: CivilDay },
): Question[] {
  const asked: string[] = [];
  if (secondLine !== null) asked.push(secondLine);
  if (day > now.asOf) {
    asked.push(`${sentenceDay(day)} lies after today, ${sentenceDay(now.asOf)}. Is it right?`);
  }
  if (earlierDay !== null && day < earlierDay.day) {
    asked.push(
      `${stepName} on ${sentenceDay(day)} would be before ${earlierDay.name} on ${sentenceDay(earlierDay.day)}. Is it right?`,
    );
  }
  if (count !== null && (!Number.isInteger(count) || count < 0)) {
    throw new Error(`The count must be a whole number of plants, 0 or more; found ${count}`);
  }
  if (count !== null && before !== null && count > before.count) {
    asked.push(
      `${count} are more than the ${before.count} at ${before.name} of ${shortened(batch)}. Is it right?`,
    );
  }
  asked.push(...tooLong({ "The note": note, "Who did it": who }));
  return asked.map(plainQuestion);
}

/** Texts, by what they are, that a cell does not hold whole. */
export function tooLong(texts: Readonly<Record<string, string>>): string[] {
  return Object.entries(texts)
    .filter(([, { length }]) => length > LONGEST_TEXT)
    .map(
      ([what, { length }]) =>
        `${what} has ${length} characters, and a cell holds ${LONGEST_TEXT}: write it without its end?`,
    );
}

/** Cells that hold something already. */
export function occupied(
  { door }: RecordsNow,
  writes: readonly (CellWrite & LoggedCell)[],
): Question[] {
  return writes
    .filter(({ before }) => before !== "")
    .map(({ cell, header, before, after }) => {
      const [stands, would] = [plainText(door, before), plainText(door, after)];
      // What the log can't hold whole could not be put back whole.
      const cut =
        stands.length > LONGEST_TEXT
          ? `; it is too long to be put back whole, should you take that back`
          : "";
      return {
        question: `${shortened(header)} (${cell}) holds ${short(stands)} already. Write ${short(would)} over it${cut}?`,
        stands,
        would,
      };
    });
}

function short(text: string): string {
  return text.length > LONGEST_SHOWN ? `${text.slice(0, LONGEST_SHOWN)}…` : text;
}

const LONGEST_SHOWN = 200;

/** What the table has no column for: it is asked about, and kept in the log. */
export function withoutColumn(
  now: RecordsNow,
  {
    target: { count, note },
    request,
    own,
  }: { readonly target: TaskTarget; readonly request: RecordWish; readonly own: OwnWrites },
): { readonly kept: readonly LoggedCell[]; readonly questions: readonly Question[] } {
  const kept: LoggedCell[] = [];
  const keep = (header: string, after: LoggedCell["after"]) => {
    const cell: LoggedCell = {
      tab: now.tab,
      cell: "",
      header,
      before: "",
      after,
      batch: request.batch,
      task: request.task,
    };
    if (!own.keeps(cell)) kept.push(cell);
  };
  if (count === null && request.count !== null) keep("(count)", request.count);
  if (note === null && request.note !== "") keep("(note)", request.note);
  return {
    kept,
    questions: kept.map(({ header, after }) =>
      plainQuestion(
        `Your table has no column for the ${header.slice(1, -1)} of ${request.task}: ${short(plainText(now.door, after))} would stand in the write log only. Go on?`,
      ),
    ),
  };
}
