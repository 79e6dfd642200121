import { calibrationBlock } from "./calibration/calibration-table";
import { type NurseryJob, nurseryJobs, scoreJob } from "./calibration/nursery-jobs";
import type { NurseryScore } from "./calibration/score-nursery";
import { KINDS, LEVELS } from "./calibration/settings";
import { partAsked } from "./part-asked";
import { checkNurseries, printList } from "./workers";

/**
 * Holds the ranges of BATCH_STAGES against what comes true in invented nurseries, beside plain
 * rivals. Ends with 1 when a hard limit is broken.
 *
 * Run by npm run check:calibration: about 9 minutes on 2 cores. With after a --: --tenth for a tenth of the
 * nurseries, as CI does, --stages to show the rivals by stage too, --past 30 for the nurseries of 30 past batches alone, --cores 1 to
 * leave the other cores alone.
 */

const NURSERIES_A_KIND = 200;

await checkNurseries<NurseryJob, NurseryScore>({
  program: import.meta.url,
  jobs: () => {
    const jobs = nurseryJobs(partAsked(process.argv, NURSERIES_A_KIND), pastAsked());
    if (jobs.length === 0) throw new Error("--past asks for 3, 30 or 300");
    return jobs;
  },
  score: scoreJob,
  print: printBlocks,
});

function printBlocks(scores: readonly NurseryScore[], jobs: readonly NurseryJob[]): number {
  const rivalStages = process.argv.includes("--stages");
  const blocks = KINDS.flatMap((kind, kindIndex) => {
    const own = scores.filter((_, index) => jobs[index]?.kind === kindIndex);
    return own.length === 0
      ? []
      : LEVELS.map((level) => calibrationBlock(kind, { level, scores: own, rivalStages }));
  });
  for (const { text } of blocks) console.log(text);
  const outsideHard = blocks.flatMap((block) => block.outsideHard);
  printList("Outside the hard limit", outsideHard);
  printList(
    "Outside the goal",
    blocks.flatMap(({ outsideGoal }) => outsideGoal),
  );
  printList(
    "A rival that covers as well is narrower",
    blocks.flatMap(({ wider }) => wider),
  );
  return outsideHard.length;
}

function pastAsked(): number | null {
  const at = process.argv.indexOf("--past");
  return at === -1 ? null : Number(process.argv[at + 1]);
}
