/** The one lock of a workbook, shared by all runs of its scripts. */
export interface DocumentLock {
  /** Takes the lock for a run. @returns false when another run has it */
  take(run: object): boolean;
  /** Gives the lock back, if this run has it. */
  giveBack(run: object): void;
  isHeldBy(run: object): boolean;
  isFree(): boolean;
}

/** A lock that nobody has yet. */
export function documentLock(): DocumentLock {
  let holder: object | null = null;
  return {
    take(run) {
      holder ??= run;
      return holder === run;
    },
    giveBack(run) {
      if (holder === run) holder = null;
    },
    isHeldBy: (run) => holder === run,
    isFree: () => holder === null,
  };
}
