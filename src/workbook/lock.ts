const LONGEST_WAIT_MS = 10_000;

/** Another run writes. */
export class Busy extends Error {}

/**
 * Does something that writes while nobody else's script does.
 *
 * @throws Busy when another is at it for too long
 */
export function withLock<Result>(work: () => Result): Result {
  const lock = LockService.getDocumentLock();
  if (!lock.tryLock(LONGEST_WAIT_MS)) {
    throw new Busy("Somebody else is writing just now: try again in a moment");
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
