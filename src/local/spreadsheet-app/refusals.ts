import { ServiceError } from "./service-error";

/**
 * When a script hears that a write was refused, by a protection or a rule for input.
 *
 * "alone" and "rest": at the next look into cells, at `flush`, or when the run ends. What was
 * written between is there with "alone" and lost as well with "rest": nobody has seen which is so.
 * "never": at the write itself, which is kinder than the spreadsheet.
 */
export type LateRefusals = "alone" | "rest" | "never";

/**
 * The refused writes of one run. Sources: public projects that write "because Apps Script queues
 * these operations and only reports them when it flushes, a try/catch around the call does not
 * catch it" and "Sheets throws at the next flush"; the reference page of SpreadsheetApp on `flush`.
 * That a look brings it out, and which calls are looks, is from memory.
 */
export interface Refusals {
  /**
   * Does a write, or nothing where the check throws.
   * @throws ServiceError at once only in the mode "never"
   */
  attempt(check: () => void, write: () => void): void;
  /** @throws ServiceError the first refusal that the script has not heard of */
  show(): void;
}

/** Those of a run that begins. */
export function refusals(mode: LateRefusals): Refusals {
  let pending: ServiceError | null = null;
  return {
    attempt(check, write) {
      if (pending && mode === "rest") return;
      try {
        check();
      } catch (error) {
        if (!(error instanceof ServiceError) || mode === "never") throw error;
        pending ??= error;
        return;
      }
      write();
    },
    show() {
      const found = pending;
      pending = null;
      if (found) throw found;
    },
  };
}

const LOOKS = new Set([
  "SpreadsheetApp.flush",
  ...["getValues", "getValue", "getDisplayValues", "getDisplayValue"].map((one) => `Range.${one}`),
  ...["getFormulas", "getFormula", "isBlank", "getNumberFormat", "getNote"].map(
    (one) => `Range.${one}`,
  ),
  ...["getDataRange", "getLastRow", "getLastColumn"].map((one) => `Sheet.${one}`),
]);

/** Whether a call makes the spreadsheet say what it has refused. @param method such as "Range.getValue" */
export function bringsOutRefusals(method: string): boolean {
  return LOOKS.has(method);
}
