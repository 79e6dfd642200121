import { availableParallelism } from "node:os";
import { isMainThread, parentPort, Worker, workerData } from "node:worker_threads";

const MOST_WORKERS = 4;

interface Numbered<Thing> {
  readonly number: number;
  readonly thing: Thing;
}

/** The cores asked for by --cores; as many as there are, up to four, if left out. */
export function coresAsked(words: readonly string[]): number {
  const at = words.indexOf("--cores");
  if (at === -1) return Math.min(MOST_WORKERS, availableParallelism());
  const cores = Number(words[at + 1]);
  if (!Number.isInteger(cores) || cores < 1) throw new Error("--cores asks for a whole number");
  return cores;
}

/** A check that scores invented nurseries. */
interface NurseryCheck<Job, Score> {
  /** The bundle that is running; its workers run it again. */
  readonly program: string;
  readonly jobs: () => readonly Job[];
  readonly score: (job: Job) => Score;
  /** Prints what came out, scores in the order of their jobs; tells how many hard limits are broken. */
  readonly print: (scores: readonly Score[], jobs: readonly Job[]) => number;
}

/** Runs it on the cores asked for. The process ends with 1 where a hard limit is broken. */
export async function checkNurseries<Job, Score>(check: NurseryCheck<Job, Score>): Promise<void> {
  if (!isMainThread) {
    workOff(check.score);
    return;
  }
  const start = performance.now();
  const jobs = check.jobs();
  const cores = coresAsked(process.argv);
  const broken = check.print(await scoreAll<Job, Score>(check.program, jobs, cores), jobs);
  const seconds = (performance.now() - start) / 1000;
  console.log(`${jobs.length} nurseries in ${seconds.toFixed(0)} s`);
  process.exitCode = broken > 0 ? 1 : 0;
}

/** Prints how many lines there are, and each. */
export function printList(title: string, lines: readonly string[]): void {
  console.log(`${title}: ${lines.length === 0 ? "none" : lines.length}`);
  for (const line of lines) console.log(`  ${line}`);
}

/**
 * Scores in the order of the jobs, whichever worker did them, so that a run repeats exactly.
 *
 * @param program as a check's
 */
async function scoreAll<Job, Score>(
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
function workOff<Job, Score>(score: (job: Job) => Score): void {
  for (const { number, thing } of workerData as readonly Numbered<Job>[]) {
    parentPort?.postMessage({ number, thing: score(thing) });
  }
}
