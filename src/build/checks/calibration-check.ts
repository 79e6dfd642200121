import { availableParallelism } from "node:os";
import { isMainThread, parentPort, Worker, workerData } from "node:worker_threads";
import { calibrationBlock } from "./calibration/calibration-table";
import { type NurseryJob, nurseryJobs, scoreJob } from "./calibration/nursery-jobs";
import type { NurseryScore } from "./calibration/score-nursery";
import { KINDS, LEVELS } from "./calibration/settings";

/**
 * Holds the ranges of BATCH_STAGES against what comes true in invented nurseries, beside plain
 * rivals. Ends with 1 when a hard limit is broken.
 *
 * Run by npm run check:calibration, with after a --: --quick for a fifth of the nurseries, --stages
 * to show the rivals by stage too, --past 30 for the nurseries of 30 past batches alone.
 */

const NURSERIES_A_KIND = 200;
const QUICK_NURSERIES_A_KIND = 40;
const MOST_WORKERS = 4;

type Scored = { readonly place: number; readonly score: NurseryScore };

if (isMainThread) await main();
else workOff(workerData as readonly (NurseryJob & { place: number })[]);

async function main(): Promise<void> {
  const start = performance.now();
  const size = process.argv.includes("--quick") ? QUICK_NURSERIES_A_KIND : NURSERIES_A_KIND;
  const jobs = nurseryJobs(size, pastAsked());
  if (jobs.length === 0) throw new Error("--past asks for 3, 30 or 300");
  const scores = await scoreAll(jobs);
  const rivalStages = process.argv.includes("--stages");
  const blocks = KINDS.flatMap((kind, place) => {
    const own = scores.filter((_, index) => jobs[index]?.kind === place);
    return own.length === 0
      ? []
      : LEVELS.map((level) => calibrationBlock(kind, level, own, rivalStages));
  });
  for (const { text } of blocks) console.log(text);
  const outsideHard = blocks.flatMap((block) => block.outsideHard);
  list("Outside the hard limit", outsideHard);
  list(
    "Outside the goal",
    blocks.flatMap(({ outsideGoal }) => outsideGoal),
  );
  list(
    "A rival that covers as well is narrower",
    blocks.flatMap(({ wider }) => wider),
  );
  const seconds = (performance.now() - start) / 1000;
  console.log(`${jobs.length} nurseries in ${seconds.toFixed(0)} s`);
  process.exitCode = outsideHard.length > 0 ? 1 : 0;
}

function pastAsked(): number | null {
  const at = process.argv.indexOf("--past");
  return at === -1 ? null : Number(process.argv[at + 1]);
}

/** Scores in the order of the jobs, whichever worker did them, so that a run repeats exactly. */
async function scoreAll(jobs: readonly NurseryJob[]): Promise<readonly NurseryScore[]> {
  const workers = Math.min(MOST_WORKERS, availableParallelism());
  const placed = jobs.map((job, place) => ({ ...job, place }));
  const scores: NurseryScore[] = [];
  await Promise.all(
    Array.from({ length: workers }, (_, worker) => {
      const share = placed.filter(({ place }) => place % workers === worker);
      return new Promise<void>((resolve, reject) => {
        const thread = new Worker(new URL(import.meta.url), { workerData: share });
        thread.on("message", ({ place, score }: Scored) => {
          scores[place] = score;
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

function workOff(jobs: readonly (NurseryJob & { place: number })[]): void {
  for (const { place, ...job } of jobs) parentPort?.postMessage({ place, score: scoreJob(job) });
}

function list(title: string, lines: readonly string[]): void {
  console.log(`${title}: ${lines.length === 0 ? "none" : lines.length}`);
  for (const line of lines) console.log(`  ${line}`);
}
