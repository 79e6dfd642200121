import { troubleSentence, WritingError } from "./writing-error";

const LONGEST_WAIT_MS = 10_000;

/** Another run writes. */
export class Busy extends WritingError {}

/** The spreadsheet failed when all was done. */
export class DoneAnyway extends WritingError {
  constructor(cause: unknown) {
    super({ code: "doneAnyway", because: troubleSentence(cause) });
  }
}

/**
 * Does something that writes while nobody else's script does.
 *
 * @throws Busy when another is at it for too long
 * @throws DoneAnyway when it failed at the very end, with all its work done
 * @throws Error when the script runs outside a workbook, where there is no lock. Source:
 * developers.google.com/apps-script/reference/lock/lock-service.
 */
export function withLock<Result>(work: () => Result): Result {
  // Typed as if it always were there; a script that runs outside a workbook is given none.
  const lock: GoogleAppsScript.Lock.Lock | null = LockService.getDocumentLock();
  if (lock === null) {
    throw new WritingError({ code: "noWorkbook" });
  }
  if (!lock.tryLock(LONGEST_WAIT_MS)) {
    throw new Busy({ code: "busy" });
  }
  let result: Result;
  try {
    result = work();
  } catch (error) {
    try {
      letGo(lock);
    } catch {
      // What went wrong first is what counts.
    }
    throw error;
  }
  try {
    letGo(lock);
  } catch (error) {
    throw new DoneAnyway(error);
  }
  return result;
}

/** What is written must be in the sheet before the next may read it. */
function letGo(lock: GoogleAppsScript.Lock.Lock): void {
  try {
    SpreadsheetApp.flush();
  } finally {
    lock.releaseLock();
  }
}
