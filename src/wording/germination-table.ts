import {
  type Answer,
  GERMINATION_COLUMNS,
  type GerminationSummary,
  type SamplesReading,
  SEED_COLUMNS,
  type SeedBatches,
  type SeedRemark,
} from "../core";
import * as text from "../sentences/made/germination";
import { headers } from "../sentences/made/germination-columns";
import { fewNames } from "./names";
import { type SentencesOf, sentenceOf, together } from "./sentence-of";
import { ROW_TROUBLES } from "./small-tables";
import { tableOf } from "./table-of";

/** Measures of a germination, a row each, and below them whether samples agree. */
export function germinationTable({ sown, measures, samples }: GerminationSummary): Answer {
  const rows: readonly (readonly [string, number | null, string])[] = [
    [text.sown(), sown, text.seeds()],
    [text.cameUp(), measures.germinated, text.seeds()],
    [text.germination(), measures.share * 100, text.percent()],
    [text.firstCameUp(), measures.firstDay, text.days()],
    [text.lastCameUp(), measures.lastDay, text.days()],
    [text.halfPlusOne(), measures.halfDaysCoolbear, text.days()],
    [text.half(), measures.halfDaysFarooq, text.days()],
    [text.meanTime(), measures.meanDays, text.days()],
    [text.variance(), measures.varianceDays, text.daysSquared()],
    [text.standardError(), measures.standardErrorDays, text.days()],
    [text.speed(), measures.maguireSpeed, text.seedsADay()],
    [text.velocity(), measures.velocity, text.percentADay()],
  ];
  return tableOf({
    columns: GERMINATION_COLUMNS,
    headers: headers(),
    rows: rows.map(([measure, value, unit]) => ({ cells: { measure, value, unit } })),
    remark: samples === null ? null : samplesSentence(samples),
  });
}

const SAMPLES: SentencesOf<SamplesReading> = {
  agree: text.samplesAgree,
  differ: text.samplesDiffer,
  "chance-agrees": text.samplesAgreeByChance,
  "chance-differs": text.samplesDifferByChance,
  uneven: text.samplesUneven,
};

/** Whether samples sown alike agree. */
export function samplesSentence(samples: SamplesReading): string {
  return sentenceOf(SAMPLES, samples);
}

const MOST_NAMES = 10;

const REMARKS: SentencesOf<SeedRemark> = {
  ...ROW_TROUBLES,
  "samples-apart": ({ batch, samples }) =>
    text.batchSamples({ batch, samples: samplesSentence(samples) }),
  "comes-up-poorly": text.batchPoor,
  "seeds-unsaid": ({ batches }) => text.batchUnsaid({ batches: fewNames(batches, MOST_NAMES) }),
  "more-up-than-seeds": ({ batches }) => text.batchMore({ batches: fewNames(batches, MOST_NAMES) }),
};

/** Batches of seed by their samples, a row each. */
export function seedTable({ batches, remarks }: SeedBatches): Answer {
  return tableOf({
    columns: SEED_COLUMNS,
    headers: headers(),
    rows: batches.map((one) => ({ cells: { ...one } })),
    remark: together(remarks.map((one) => sentenceOf(REMARKS, one))),
  });
}
