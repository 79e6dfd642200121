/** What came up of a sowing, by its inspections. */

export {
  GERMINATION_COLUMNS,
  type GerminationSummary,
  germinationSummary,
} from "./germination-summary";
export type { SamplesReading } from "./samples";
