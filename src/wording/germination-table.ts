import type { SamplesReading } from "../core";
import { type Answer, GERMINATION_COLUMNS, type GerminationSummary } from "../core";
import * as text from "../sentences/made/germination";
import { headers } from "../sentences/made/germination-columns";
import { type SentencesOf, sentenceOf } from "./sentence-of";
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
