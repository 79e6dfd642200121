import { calibrationBlock } from "./calibration/calibration-table";
import { type NurseryJob, nurseryJobs, scoreJob } from "./calibration/nursery-jobs";
import type { NurseryScore } from "./calibration/score-nursery";
import { KINDS, LEVELS } from "./calibration/settings";
import { partAsked } from "./part-asked";
import { coresAsked, isProgram, scoreAll, workOff } from "./workers";

/**
 * Holds the ranges of BATCH_STAGES against what comes true in invented nurseries, beside plain
 * rivals. Ends with 1 when a hard limit is broken.
 *
 * Run by npm run check:calibration: about 9 minutes on 2 cores. With after a --: --tenth for a tenth of the
 * nurseries, as CI does, --stages to show the rivals by stage too, --past 30 for the nurseries of 30 past batches alone, --cores 1 to
 * leave the other cores alone.
 */

const NURSERIES_A_KIND = 200;

if (isProgram) await main();
else workOff(scoreJob);

async function main(): Promise<void> {
  const start = performance.now();
  const size = partAsked(process.argv, NURSERIES_A_KIND);
  const jobs = nurseryJobs(size, pastAsked());
  if (jobs.length === 0) throw new Error("--past asks for 3, 30 or 300");
  const cores = coresAsked(process.argv);
  const scores = await scoreAll<NurseryJob, NurseryScore>(import.meta.url, jobs, cores);
  const rivalStages = process.argv.includes("--stages");
  const blocks = KINDS.flatMap((kind, kindIndex) => {
    const own = scores.filter((_, index) => jobs[index]?.kind === kindIndex);
    return own.length === 0
      ? []
      : LEVELS.map((level) => calibrationBlock(kind, { level, scores: own, rivalStages }));
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

function list(title: string, lines: readonly string[]): void {
  console.log(`${title}: ${lines.length === 0 ? "none" : lines.length}`);
  for (const line of lines) console.log(`  ${line}`);
}
