import type { MethodDescription } from "../method-description";
import * as usual from "./usual";

/** Rubber budded green in its bag and cut back, sent out at three whorls. Stumps: see rubber-budded-stump.ts. */
export const rubberGreenBud: MethodDescription = {
  name: "Rubber green bud",
  steps: [
    usual.SOWING_IN_BAGS,
    { ...usual.GERMINATION, days: [7, 14, 21], keptOf100: 75, source: usual.COMMON },
    {
      ...usual.GRADED_GRAFTING,
      after: "Sowing",
      days: [60, 90, 150],
      needs: "bud 1.1; wrap strip 30 cm",
      source: `Days: common practice, no source (stocks for stumps are older). ${usual.GRADE_OUT}. Buds with a tenth for waste, wrap: common practice, no source`,
    },
    {
      ...usual.FIRST_RELEASE,
      days: [20, 21, 25],
      source:
        "SMIARC Technoguide 17, 2007 (21; not found again, here and below); from and by common practice, no source",
    },
    usual.takeCount([21, 24, 35], 95, {
      kept: "Ramananathan et al. 1991, above 95 %, of young budding in bags, Sabah",
    }),
    {
      name: "Cut back",
      after: "Grafting",
      days: [21, 25, 35],
      caution: usual.BLADES,
      source:
        "SMIARC Technoguide 17, 2007 (3 weeks after budding, the earliest here); later, after the take count, common practice, no source; a nursery in Kerala has 28 (weak)",
    },
    {
      name: "Bud break",
      after: "Cut back",
      days: [7, 9, 20],
      source:
        "SMIARC Technoguide 17, 2007 (7-10); Udayakumara and Seneviratne 2006 (not found again) saw 20 and 60 with brown buds",
    },
    {
      name: "Ready",
      after: "Cut back",
      days: [84, 91, 126],
      counted: true,
      keptOf100: 95,
      caution: usual.MOVING_PLANTS,
      source:
        "Days: SMIARC Technoguide 17, 2007, second whorl at 6 weeks, three whorls 6-8 weeks later as we read it; by common practice, no source. Kept: Ramananathan et al. 1991, 87-96 % of buddings recovered in all",
    },
    ...usual.beforeGrafting(null),
    ...usual.BEFORE_READY,
    ...usual.care("Sowing"),
    usual.shootsBelow("False shoots off: farmextensionmanager.com."),
  ],
};
