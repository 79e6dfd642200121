import type { MethodDescription } from "../method-description";
import * as usual from "./usual";

/** Rubber budded in the field bed, pulled as a stump when the bud has taken, and sent out without leaves. */
export const rubberBuddedStump: MethodDescription = {
  name: "Rubber budded stump",
  steps: [
    {
      ...usual.SOWING,
      needs: "seed 1",
      source: `In field beds, without bags: ${usual.COMMON.toLowerCase()}`,
    },
    { ...usual.GERMINATION, days: [7, 14, 21], keptOf100: 75, source: usual.COMMON },
    {
      ...usual.GRADED_GRAFTING,
      after: "Sowing",
      days: [75, 150, 240],
      needs: "bud 1.1; wrap strip 30 cm",
      source: `Days: Ramananathan et al. 1991, 2.5-8 months, Sabah; a Vietnamese nursery's page has 4-6 (weak source). ${usual.GRADE_OUT}. Buds with a tenth for waste, wrap: common practice, no source`,
    },
    {
      ...usual.FIRST_RELEASE,
      days: [15, 20, 25],
      source: "15-20: a Vietnamese nursery's page (weak source); by common practice, no source",
    },
    usual.takeCount([20, 25, 35], 85, {
      kept: "51-94.5 % by stock and clone, Abdul Razak and Ong 2020; 85 is our choice, weak",
    }),
    {
      ...usual.CUT_BACK,
      after: "Take count",
      days: [7, 14, 90],
      source:
        "5-7 cm above the bud, as it is pulled, the cut sealed: a Vietnamese nursery's page (weak source); days common practice, no source",
    },
    { ...usual.ready([0, 1, 5]), after: "Cut back" },
    ...usual.beforeGrafting(null),
    ...usual.care("Sowing"),
  ],
};
