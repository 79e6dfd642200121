/** What came up of a sowing, by its inspections. */

export {
  GERMINATION_COLUMNS,
  type GerminationSummary,
  germinationSummary,
} from "./germination-summary";
export { readSamples, type SampleHabits, type SamplesTable, samplesTable } from "./read-samples";
export type { SamplesReading } from "./samples";
export {
  SEED_COLUMNS,
  type SeedBatches,
  type SeedRemark,
  seedBatches,
} from "./seed-batches";
