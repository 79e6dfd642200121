import { afterEach, beforeEach } from "vitest";

/** Lets the tests of a job go on from one another: what comes after a step that failed has nothing to stand on. */
export function oneAfterAnother(): void {
  let isBroken = false;
  beforeEach(() => {
    if (isBroken) throw new Error("A step before this one failed");
  });
  afterEach(({ task }) => {
    isBroken ||= task.result?.state === "fail";
  });
}
