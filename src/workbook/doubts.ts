import type { CivilDay } from "../core";
import { dayWords } from "../wording/days";
import type { Asked, KeptFact, TooLong } from "../wording/writing-codes";
import { KEPT_HEADER } from "./mark";
import type { OwnWrites, RecordWish } from "./record-task";
import { plainText, type RecordsNow } from "./records-tab";
import { LONGEST_TEXT } from "./safe-text";
import type { PlainValue, Question } from "./sidebar-calls";
import type { CellWrite } from "./table-write";
import type { TaskTarget } from "./task-target";
import type { LoggedCell } from "./write-log";
import { WritingError } from "./writing-error";

/** A question about a cell with both values; about none where they are left out. */
export function question(
  ask: Asked,
  stands: PlainValue = null,
  would: PlainValue = null,
): Question {
  return { id: JSON.stringify(ask), ask, stands, would };
}

/**
 * What can hardly be meant; the person is asked.
 *
 * @throws WritingError when the count is none
 */
export function doubtsAbout(
  now: RecordsNow,
  {
    target: { before, earlierDay, stepName, secondLine },
    request: { count, batch, note, who },
    day,
  }: { readonly target: TaskTarget; readonly request: RecordWish; readonly day: CivilDay },
): Question[] {
  const asked: Asked[] = [];
  if (secondLine !== null) asked.push(secondLine);
  const step = stepName;
  if (day > now.asOf) {
    asked.push({ code: "afterToday", day: dayWords(day), today: dayWords(now.asOf) });
  }
  if (earlierDay !== null && day < earlierDay.day) {
    const [earlier, before] = [earlierDay.name, dayWords(earlierDay.day)];
    asked.push({
      code: "beforeStep",
      step,
      day: dayWords(day),
      earlier,
      earlierDay: before,
    });
  }
  if (count !== null && (!Number.isInteger(count) || count < 0)) {
    throw new WritingError({ code: "notACount", found: String(count) });
  }
  if (count !== null && before !== null && count > before.count) {
    const { count: most, name } = before;
    asked.push({ code: "moreThanBefore", count, before: most, step: name, batch });
  }
  asked.push(...tooLong({ note, who }));
  return asked.map((ask) => question(ask));
}

/** Texts, by what they are, that a cell does not hold whole. */
export function tooLong(texts: { readonly [What in TooLong["what"]]?: string }): TooLong[] {
  return (Object.keys(texts) as TooLong["what"][]).flatMap((what): TooLong[] => {
    const { length } = texts[what] ?? "";
    return length > LONGEST_TEXT ? [{ code: "tooLong", what, length, most: LONGEST_TEXT }] : [];
  });
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
      const ask: Asked = {
        // What the log can't hold whole can't be put back whole.
        code: stands.length > LONGEST_TEXT ? "holdsTooMuch" : "holdsAlready",
        header,
        cell,
        stands: short(stands),
        would: short(would),
      };
      return question(ask, stands, would);
    });
}

/** A text as a question repeats it. */
export function short(text: string): string {
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
): {
  readonly kept: readonly LoggedCell[];
  /** What the log alone holds then, and what it holds by now. */
  readonly inLog: readonly KeptFact[];
  readonly questions: readonly Question[];
} {
  const kept: LoggedCell[] = [];
  const inLog: KeptFact[] = [];
  const questions: Question[] = [];
  const { batch, task } = request;
  const keep = (what: KeptFact, after: LoggedCell["after"]) => {
    const header = KEPT_HEADER[what];
    const cell: LoggedCell = {
      tab: now.tab,
      cell: "",
      header,
      before: "",
      after,
      batch,
      task,
    };
    inLog.push(what);
    if (own.keeps(cell)) return;
    kept.push(cell);
    const value = short(plainText(now.door, after));
    questions.push(question({ code: "columnLacks", what, task, value }));
  };
  if (count === null && request.count !== null) keep("count", request.count);
  if (note === null && request.note !== "") keep("note", request.note);
  return { kept, inLog, questions };
}
