import { eachName } from "../cells";
import { type Batch, type LeftOut, leftOut, type MethodsUnread, type Records } from "../records";
import { batchMethods } from "./method-of-batch";
import type { Timetable } from "./timetable";

/** What is asked of batches by their methods. */
interface ByMethods {
  readonly records: Records;
  readonly timetable: Timetable;
}

/**
 * Remarks on what an answer by methods leaves out: rows that could not be used, and batches whose
 * method is not known.
 *
 * @param asked the batches that the answer would have told of
 */
export function leftOutByMethod(
  { records, timetable }: ByMethods,
  asked: (batch: Batch) => boolean = () => true,
): readonly LeftOut[] {
  const read = batchMethods(timetable);
  const unread = { "no-such-method": [] as string[], "several-methods": [] as string[] };
  for (const batch of records.batches) {
    const { code } = read(batch);
    if (code !== "method" && asked(batch)) unread[code].push(batch.name);
  }
  const codes = ["no-such-method", "several-methods"] as const;
  return [
    ...leftOut(records),
    ...codes
      .filter((code) => unread[code].length > 0)
      .map((code): MethodsUnread => ({ code, batches: eachName(unread[code]) })),
  ];
}

/** The same where closed batches are not told of. */
export function leftOutOfOpen(question: ByMethods): readonly LeftOut[] {
  return leftOutByMethod(question, ({ closed }) => !closed);
}
