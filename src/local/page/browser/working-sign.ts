import { working } from "../../../sentences/made/local-page";

/** Work shorter than this needs no sign. */
const PATIENCE_MS = 400;

/** Shows that something is going on while work takes longer than a moment. */
export function workingSign(line: HTMLElement): <Result>(work: Promise<Result>) => Promise<Result> {
  let running = 0;
  return async (work) => {
    running += 1;
    const timer = setTimeout(() => {
      line.textContent = working();
    }, PATIENCE_MS);
    try {
      return await work;
    } finally {
      clearTimeout(timer);
      running -= 1;
      if (running === 0) line.textContent = "";
    }
  };
}
