import { totalOf } from "../mathematics";
import { wilsonInterval } from "../statistics";
import type { RowTrouble } from "../tables";
import { germinationMeasures } from "./germination";
import type { SampledBatch, SamplesTable } from "./read-samples";
import { comparedSamples, type SamplesReading } from "./samples";

/** The columns of batches of seed by their samples. */
export const SEED_COLUMNS = {
  batch: "text",
  samples: "count",
  seedsSown: "count",
  up: "count",
  germination: "share",
  low: "share",
  high: "share",
  lastInspection: "count",
  halfUp: "number",
  othersByThen: "share",
} as const;

/** A batch of seed, as its samples tell. */
export interface SeedBatch {
  readonly batch: string;
  readonly samples: number;
  readonly seedsSown: number;
  readonly up: number;
  /** 0 to 1, of the seeds sown. */
  readonly germination: number;
  readonly low: number;
  readonly high: number;
  /** Days since sowing of the last inspection. */
  readonly lastInspection: number;
  /** Days until half of those that came up were up, by Coolbear; null where nothing came up. */
  readonly halfUp: number | null;
  /** Share of the other batches' seed that was up by then, 0 to 1; null where none was looked at so late. */
  readonly othersByThen: number | null;
}

export type SeedRemark =
  | RowTrouble
  | { readonly code: "samples-apart"; readonly batch: string; readonly samples: SamplesReading }
  /** Fewer are up than of the others by the same day, by more than chance and by enough to matter. */
  | {
      readonly code: "comes-up-poorly";
      readonly batch: string;
      readonly share: number;
      readonly others: number;
      readonly day: number;
    }
  | { readonly code: "seeds-unsaid"; readonly batches: readonly string[] }
  | { readonly code: "more-up-than-seeds"; readonly batches: readonly string[] };

export interface SeedBatches {
  readonly batches: readonly SeedBatch[];
  readonly remarks: readonly SeedRemark[];
}

const LEVEL = 0.95;
/** A smaller difference is no reason to sow again (our choice). */
const MATTERS = 0.1;
/** Samples that differ so are said. */
const APART: ReadonlySet<SamplesReading["code"]> = new Set(["differ", "chance-differs"]);

/**
 * Batches of seed by their samples, in the table's order, each beside the others on the day of its own last
 * inspection, so that a poor one is seen while there is time to sow again. Samples whose seeds are not said, or of
 * which more came up than was sown, are left out and named.
 *
 * Method: the share's range by Wilson's interval of all seeds together, a poor batch where it lies below the
 *   others' share by then; for the days germination.ts.
 */
export function seedBatches({ batches, troubles }: SamplesTable): SeedBatches {
  const unsaid = batches.filter(({ samples }) => samples.some(({ sown }) => sown === null));
  const over = batches.filter(
    (one) => !unsaid.includes(one) && one.samples.some(({ sown, ...of }) => upIn(of) > (sown ?? 0)),
  );
  const used = batches.filter(
    (one) =>
      !unsaid.includes(one) &&
      !over.includes(one) &&
      one.samples.some(({ inspections }) => inspections.length > 0),
  );
  const remarks: SeedRemark[] = [...troubles];
  const named = (code: "seeds-unsaid" | "more-up-than-seeds", of: readonly SampledBatch[]) => {
    if (of.length > 0) remarks.push({ code, batches: of.map(({ batch }) => batch) });
  };
  named("seeds-unsaid", unsaid);
  named("more-up-than-seeds", over);
  const rows = used.map((one) => {
    const row = rowOf(one, used);
    remarks.push(...remarksOn(one, row));
    return row;
  });
  return { batches: rows, remarks };
}

const upIn = ({ inspections }: Pick<SampledBatch["samples"][number], "inspections">): number =>
  totalOf(inspections.map(({ up }) => up));

const seedsIn = ({ samples }: SampledBatch) => totalOf(samples.map(({ sown }) => sown ?? 0));

const inspectionsIn = ({ samples }: SampledBatch) =>
  samples.flatMap(({ inspections }) => inspections);

function rowOf(batch: SampledBatch, all: readonly SampledBatch[]): SeedBatch {
  const seedsSown = seedsIn(batch);
  const byDay = new Map<number, number>();
  for (const { days, up } of inspectionsIn(batch)) byDay.set(days, (byDay.get(days) ?? 0) + up);
  const days = [...byDay.keys()].sort((one, other) => one - other);
  const counts = days.map((day) => byDay.get(day) ?? 0);
  const { germinated, share, halfDaysCoolbear } = germinationMeasures({
    days,
    counts,
    sown: seedsSown,
  });
  const lastInspection = days[days.length - 1] ?? 0;
  const others = all.filter(
    (one) => one !== batch && inspectionsIn(one).some((it) => it.days >= lastInspection),
  );
  const by = others.flatMap(inspectionsIn).filter((one) => one.days <= lastInspection);
  const { low, high } = wilsonInterval({ successes: germinated, trials: seedsSown, level: LEVEL });
  return {
    batch: batch.batch,
    samples: batch.samples.length,
    seedsSown,
    up: germinated,
    germination: share,
    low,
    high,
    lastInspection,
    halfUp: halfDaysCoolbear,
    othersByThen:
      others.length === 0 ? null : totalOf(by.map(({ up }) => up)) / totalOf(others.map(seedsIn)),
  };
}

function remarksOn({ samples }: SampledBatch, row: SeedBatch): SeedRemark[] {
  const remarks: SeedRemark[] = [];
  const compared = comparedSamples(samples.map(upIn), row.seedsSown);
  const { batch, germination: share, othersByThen: others, lastInspection: day } = row;
  const alike = new Set(samples.map(({ sown }) => sown)).size === 1;
  if (alike && compared !== null && APART.has(compared.code)) {
    remarks.push({ code: "samples-apart", batch, samples: compared });
  }
  if (others !== null && row.high < others && others - share >= MATTERS) {
    remarks.push({ code: "comes-up-poorly", batch, share, others, day });
  }
  return remarks;
}
