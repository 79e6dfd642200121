import type { CivilDay } from "../../core";
import type { Question } from "../../wire/writing";
import { dayWords } from "../../wording/days";
import type { Asked, KeptFact } from "../../wording/writing-codes";
import { KEPT_HEADER } from "../host/mark";
import { WritingError } from "../host/writing-error";
import { plainText, type RecordsNow } from "../reading/records-tab";
import { question, short, tooLong } from "../tables/questions";
import type { LoggedCell } from "../writing/write-log";
import type { OwnWrites, RecordWish } from "./record-wish";
import type { TaskTarget } from "./task-cells";

/**
 * What can hardly be meant; the person is asked.
 *
 * @throws WritingError when the count is none
 */
export function doubtsAbout(
  now: RecordsNow,
  {
    target: { before, earlierDay, stepName, secondLine },
    request: { count, batch, note, who, notDone },
    day,
  }: { readonly target: TaskTarget; readonly request: RecordWish; readonly day: CivilDay },
): Question[] {
  const asked: Asked[] = [];
  if (secondLine !== null) asked.push(secondLine);
  const step = stepName;
  if (day > now.asOf && !notDone) {
    asked.push({ code: "afterToday", day: dayWords(day), today: dayWords(now.asOf) });
  }
  if (earlierDay !== null && day < earlierDay.day && !notDone) {
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
