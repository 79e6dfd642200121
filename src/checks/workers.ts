import { availableParallelism } from "node:os";
import { isMainThread, parentPort, Worker, workerData } from "node:worker_threads";

const MOST_WORKERS = 4;

interface Numbered<Thing> {
  readonly number: number;
  readonly thing: Thing;
}

/** Whether this is the program itself, and not one of its workers. */
export const isProgram = isMainThread;

/** The cores asked for by --cores; as many as there are, up to four, if left out. */
export function coresAsked(words: readonly string[]): number {
  const at = words.indexOf("--cores");
  if (at === -1) return Math.min(MOST_WORKERS, availableParallelism());
  const cores = Number(words[at + 1]);
  if (!Number.isInteger(cores) || cores < 1) throw new Error("--cores asks for a whole number");
  return cores;
}

/**
 * Scores in the order of the jobs, whichever worker did them, so that a run repeats exactly.
 *
 * @param program the bundle that is running; its workers run it again and call workOff
 */
export async function scoreAll<Job, Score>(
  program: string,
  jobs: readonly Job[],
  cores: number,
): Promise<readonly Score[]> {
  const scores: Score[] = [];
  await Promise.all(
    Array.from({ length: cores }, (_, worker) => {
      const share = jobs
        .map((thing, number): Numbered<Job> => ({ number, thing }))
        .filter(({ number }) => number % cores === worker);
      return new Promise<void>((resolve, reject) => {
        const thread = new Worker(new URL(program), { workerData: share });
        thread.on("message", ({ number, thing }: Numbered<Score>) => {
          scores[number] = thing;
        });
        thread.on("error", reject);
        thread.on("exit", (code) =>
          code === 0 ? resolve() : reject(new Error(`worker ${worker} ended with ${code}`)),
        );
      });
    }),
  );
  return scores;
}

/** A worker's part: scores the jobs that it was given. */
export function workOff<Job, Score>(score: (job: Job) => Score): void {
  for (const { number, thing } of workerData as readonly Numbered<Job>[]) {
    parentPort?.postMessage({ number, thing: score(thing) });
  }
}
