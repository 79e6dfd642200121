import { describe, expect, it } from "vitest";
import {
  heldTogether,
  LOOKBACKS,
  lookbackJobs,
  lookbackScore,
  SHOWN_APART,
} from "../../src/checks/calibration/lookback-shown";

const NURSERIES = 14;
/** Most ranges are past then. */
const DAYS_BEFORE = 240;

describe("what the look back shows, in invented nurseries of which the truth is known", () => {
  const jobs = lookbackJobs(NURSERIES);

  it("loses batches in half of what is looked at", () => {
    expect(new Set(LOOKBACKS.map(({ lost }) => lost)).size).toBe(2);
    expect(jobs).toHaveLength(NURSERIES * LOOKBACKS.length);
  });

  it.each([0, 0.07])("is what is so, where a share of %s of the batches is lost", (lost) => {
    const scores = jobs
      .filter((job) => job.lost === lost && job.daysBefore === DAYS_BEFORE)
      .map(lookbackScore);
    for (const quantity of ["days", "plants"] as const) {
      const { shown, truly, of } = heldTogether(scores, quantity);
      expect(of).toBeGreaterThan(300);
      expect(Math.abs(shown - truly)).toBeLessThan(SHOWN_APART);
    }
  });
});
