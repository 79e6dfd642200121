/** One step of the job: what a person does, and in words what was seen. It throws where that is wrong. */
export interface JobStep {
  readonly does: string;
  readonly see: () => string;
}

export interface Tally {
  readonly passed: number;
  readonly failed: number;
}

/** Takes the steps in turn; after one that fails the rest can't be reached, and count as failed. */
export function take(steps: readonly JobStep[], print: (line: string) => void): Tally {
  let passed = 0;
  for (const [at, { does, see }] of steps.entries()) {
    try {
      print(`  ok      ${does}: ${see()}`);
      passed += 1;
    } catch (error) {
      print(`  FAILED  ${does}: ${error instanceof Error ? error.message : String(error)}`);
      for (const missed of steps.slice(at + 1)) print(`  FAILED  ${missed.does}: not reached`);
      break;
    }
  }
  return { passed, failed: steps.length - passed };
}

/** @throws Error with the sentence where the condition does not hold */
export function must(condition: boolean, otherwise: string): asserts condition {
  if (!condition) throw new Error(otherwise);
}

/** The thing itself. @throws Error with the sentence where there is none */
export function found<Thing>(thing: Thing | null | undefined, otherwise: string): Thing {
  if (thing === null || thing === undefined) throw new Error(otherwise);
  return thing;
}
