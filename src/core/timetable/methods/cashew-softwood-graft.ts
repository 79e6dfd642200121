import type { MethodDescription } from "../method-description";
import * as usual from "./usual";

/** Cashew grafted on soft seedlings of six to nine weeks. */
export const cashewSoftwoodGraft: MethodDescription = {
  name: "Cashew softwood graft",
  steps: [
    {
      name: "Sowing",
      ...usual.START,
      needs: "nut 1; bag 1",
      caution: `Raw nuts and their shells burn the skin: wear gloves. ${usual.TREATED_SEED}`,
      source: usual.COMMON,
    },
    {
      ...usual.GERMINATION,
      days: [5, 12, 20],
      keptOf100: 75,
      source:
        "Days: IASRI e-course, Narina et al. 2020 and others (5-8, 7-10, 15-20); usual lies between. Kept: common practice, no source",
    },
    {
      ...usual.GRADED_GRAFTING,
      after: "Sowing",
      days: [30, 45, 60],
      needs: "scion 1.1; wrap strip 30 cm",
      source: `Days: IASRI e-course and others (30-40, 35-45); Yeboah et al. 2020 (60 best in Ghana). ${usual.GRADE_OUT}. Scions with a tenth for waste, wrap: common practice, no source`,
    },
    { name: "Bud break", after: "Grafting", days: [14, 21, 30], source: usual.COMMON },
    { ...usual.FIRST_RELEASE, days: [21, 30, 45], source: usual.COMMON },
    usual.takeCount([30, 45, 60], 55, {
      kept: "Narina et al. 2020, 50.1-59.8 % in trials of shade on the coast of Andhra Pradesh; 60-80 in good nurseries common practice, no source",
    }),
    {
      ...usual.SECOND_RELEASE,
      days: [60, 90, 150],
      source:
        "By: tape is cut off at the planting, 5-6 months on (farmextensionmanager.com, weak source); from and usual common practice, no source",
    },
    usual.ready(
      [150, 165, 180],
      "IASRI e-course and others, 5-6 months; whole cycles of 72 and of 90-120 days are reported too",
    ),
    ...usual.beforeGrafting({
      days: [-10, -9, -8],
      source: "DCCD, India, nursery management, 8-10; IASRI e-course tells of it without days",
    }),
    ...usual.BEFORE_READY,
    ...usual.care("Sowing"),
    usual.shootsBelow("Many shoots below the union: Yeboah et al. 2020."),
  ],
};
