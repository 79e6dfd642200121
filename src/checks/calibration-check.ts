import { calibrationBlock } from "./calibration/calibration-table";
import {
  heldTogether,
  LOOKBACKS,
  type LookbackJob,
  type LookbackScore,
  lookbackJobs,
  lookbackScore,
  SHOWN_APART,
} from "./calibration/lookback-shown";
import { type NurseryJob, nurseryJobs, scoreJob } from "./calibration/nursery-jobs";
import { type NurseryScore, QUANTITIES } from "./calibration/score-nursery";
import { KINDS, LEVELS } from "./calibration/settings";
import { allowance, partAsked } from "./part-asked";
import { checkNurseries, printList } from "./workers";

/**
 * Holds the ranges of BATCH_STAGES against what comes true in invented nurseries, beside plain
 * rivals; and what BATCH_LOOKBACK shows of them against what is so. Ends with 1 when a hard limit is broken.
 *
 * Run by npm run check:calibration: about 9 minutes on 2 cores. With after a --: --tenth for a tenth of the
 * nurseries, as CI does, --stages to show the rivals by stage too, --past 30 for the nurseries of 30 past batches alone, --cores 1 to
 * leave the other cores alone.
 */

const NURSERIES_A_KIND = 200;

type Job = NurseryJob | LookbackJob;
type Score = NurseryScore | LookbackScore;

await checkNurseries<Job, Score>({
  program: import.meta.url,
  jobs: () => {
    const jobs = nurseryJobs(partAsked(process.argv, NURSERIES_A_KIND), pastAsked());
    if (jobs.length === 0) throw new Error("--past asks for 3, 30 or 300");
    return [...jobs, ...lookbackJobs(partAsked(process.argv, NURSERIES_A_KIND))];
  },
  score: (job) => (isLookback(job) ? lookbackScore(job) : scoreJob(job)),
  print: (scores, jobs) => {
    const first = jobs.findIndex(isLookback);
    const broken = printBlocks(
      scores.slice(0, first) as readonly NurseryScore[],
      jobs.slice(0, first) as readonly NurseryJob[],
    );
    const looks = scores.slice(first) as readonly LookbackScore[];
    return broken + printLookback(looks, jobs.slice(first) as readonly LookbackJob[]);
  },
});

function isLookback(job: Job): job is LookbackJob {
  return "daysBefore" in job;
}

/** What is shown of ranges that held, and what is so, by how far is looked back and how many batches are lost. */
function printLookback(scores: readonly LookbackScore[], jobs: readonly LookbackJob[]): number {
  const apart: string[] = [];
  console.log("Looking back: of 100 ranges shown to hold | truly");
  for (const { lost, daysBefore } of LOOKBACKS) {
    const own = scores.filter(
      (_, index) => jobs[index]?.lost === lost && jobs[index]?.daysBefore === daysBefore,
    );
    for (const quantity of QUANTITIES) {
      const { shown, truly, of } = heldTogether(own, quantity);
      const line = `${daysBefore} days back, ${Math.round(100 * lost)} of 100 batches lost, ${quantity}: ${(100 * shown).toFixed(1)} | ${(100 * truly).toFixed(1)} of ${of}`;
      console.log(`  ${line}`);
      const most = SHOWN_APART + allowance(process.argv, truly, of);
      if (Math.abs(shown - truly) > most) apart.push(line);
    }
  }
  printList("Shown and true farther apart than 2 of 100", apart);
  return apart.length;
}

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
