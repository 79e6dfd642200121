import { ServiceError } from "./service-error";

/** Counts what a script asks of the services, and lets a call fail to see what becomes of it. */
export interface ServiceMeter {
  /** How often each method was called since the last reset, by "Range.setValues" and the like. */
  readonly calls: ReadonlyMap<string, number>;
  /** All calls since the last reset. */
  readonly total: number;
  /** Cells whose values were handed to the script since then. */
  readonly cellsRead: number;
  /** Forgets the counts and everything planned with the methods below. */
  reset(): void;
  /** The n-th call from now (1 is the next one) does nothing and throws, once. */
  failAt(n: number, message?: string): void;
  /** The n-th call from now does its work and then throws, once, as when the answer gets lost. */
  failAfter(n: number, message?: string): void;
  /** The n-th call from now and all that follow do nothing and throw: the script is cut off. */
  stopAt(n: number, message?: string): void;
  /** Runs an action just before the next call of a method, once: another person's edit, say. */
  before(method: string, action: () => void): void;
  /** Runs an action just before the n-th call from now, once. */
  beforeCall(n: number, action: () => void): void;
}

/** The side of the meter that the services use. */
export interface MeteredCalls {
  /** Counts a call and runs it, or doesn't, as planned. */
  pass<Result>(method: string, call: () => Result): Result;
}

const FAILURE = "Service Spreadsheets failed while accessing document.";

/** A meter at 0 that plans nothing. It throws Error where a call is planned that is no whole number from 1. */
export function serviceMeter(): ServiceMeter & MeteredCalls {
  const calls = new Map<string, number>();
  let total = 0;
  let cellsRead = 0;
  let failing: Plan | null = null;
  const actions: { due: (method: string) => boolean; run: () => void }[] = [];

  const plan = (n: number, kind: Plan["kind"], message = FAILURE) => {
    if (!Number.isInteger(n) || n < 1) throw new Error(`There is no call number ${n}`);
    failing = { at: total + n, kind, message };
  };
  const failsNow = (kind: Plan["kind"]): Plan | null => {
    if (failing?.kind !== kind) return null;
    if (kind === "stop") return total >= failing.at ? failing : null;
    if (total !== failing.at) return null;
    const found = failing;
    failing = null;
    return found;
  };

  return {
    calls,
    get total() {
      return total;
    },
    get cellsRead() {
      return cellsRead;
    },
    reset() {
      calls.clear();
      total = 0;
      cellsRead = 0;
      failing = null;
      actions.length = 0;
    },
    failAt: (n, message) => plan(n, "before", message),
    failAfter: (n, message) => plan(n, "after", message),
    stopAt: (n, message) => plan(n, "stop", message),
    before: (method, run) => actions.push({ due: (called) => called === method, run }),
    beforeCall(n, run) {
      const at = total + n;
      actions.push({ due: () => total >= at, run });
    },
    pass(method, call) {
      total += 1;
      calls.set(method, (calls.get(method) ?? 0) + 1);
      for (const action of actions.filter(({ due }) => due(method))) {
        actions.splice(actions.indexOf(action), 1);
        action.run();
      }
      const failure = failsNow("stop") ?? failsNow("before");
      if (failure) throw new ServiceError(failure.message);
      // Taken before the call: what it calls in turn must not use up the plan.
      const late = failsNow("after");
      const result = call();
      if (method === "Range.getValue") cellsRead += 1;
      if (method === "Range.getValues") cellsRead += cellsIn(result);
      if (late) throw new ServiceError(late.message);
      return result;
    },
  };
}

function cellsIn(values: unknown): number {
  return Array.isArray(values) ? values.flat().length : 0;
}

interface Plan {
  readonly at: number;
  readonly kind: "before" | "after" | "stop";
  readonly message: string;
}
