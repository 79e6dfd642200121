const LONGEST_WAIT_MS = 10_000;

/**
 * Does something that writes while nobody else's script does.
 *
 * @throws Error when another is at it for too long
 */
export function withLock<Result>(work: () => Result): Result {
  // The types say that there always is one. A script without a document has none.
  const lock: GoogleAppsScript.Lock.Lock | null = LockService.getDocumentLock();
  if (lock === null)
    throw new Error("Open the add-in from a workbook's own menu: here it has none");
  if (!lock.tryLock(LONGEST_WAIT_MS)) {
    throw new Error("Somebody else is writing just now: try again in a moment");
  }
  try {
    return work();
  } finally {
    // What is written must be in the sheet before the next may read it.
    try {
      SpreadsheetApp.flush();
    } finally {
      lock.releaseLock();
    }
  }
}
