import type { MethodDescription } from "../method-description";
import { cocoaCare } from "./cocoa-seedlings";
import * as usual from "./usual";

/** Cocoa raised from seed and budded green by patch at about five weeks. */
export const cocoaGreenPatchBud: MethodDescription = {
  name: "Cocoa green patch bud",
  steps: [
    {
      name: "Sowing",
      ...usual.START,
      needs: "seed 1; pod 0.0283; bag 1; potting mix 1.43 l",
      caution: `Sow within two days of opening the pod, or wash the seed clean of pulp. ${usual.TREATED_SEED}`,
      source:
        "35.3 seeds a pod: Trop. Agric. 49(2), Amelonado, Nigeria, the most of four varieties: others need more pods. Bag 15 x 23 cm: CPCRI; 1.43 l by geometry when filled to 20 cm. Washing: J. Botany 2017:1938359, Ghana: unwashed seed came up 80-100 % for 2 days only, washed for 21",
    },
    {
      name: "Germination",
      after: "Sowing",
      days: [7, 10, 14],
      counted: true,
      keptOf100: 85,
      source:
        "Days: CPCRI (10), The Hindu 2004 quoting CPCRI (10-15); from 7 and by 14 common practice, no source. Kept: Ndubuaku 2003, Trop. Agric. 80(1), 85 % in beds",
    },
    {
      name: "Grafting",
      after: "Sowing",
      days: [14, 35, 42],
      ...usual.GRADED,
      needs: "bud 1.1; wrap strip 15 cm",
      source: `Days: Trop. Agric. 53(4), rootstocks of 2-6 weeks; usual common practice, no source. ${usual.GRADE_OUT}. Buds with a tenth for waste, wrap: common practice, no source`,
    },
    {
      ...usual.FIRST_RELEASE,
      days: [14, 21, 28],
      source: "15: a growers' page, Venezuela (weak source); the others common practice, no source",
    },
    {
      name: "Take count",
      after: "Grafting",
      days: [21, 28, 35],
      counted: true,
      keptOf100: 85,
      source:
        "Days: common practice, no source. Kept: 90-100 % in a glasshouse, Trop. Agric. 53(4); set lower for a nursery (our choice)",
    },
    {
      ...usual.CUT_BACK,
      after: "Take count",
      days: [0, 2, 10],
      source:
        "Top bent over or cut once the wrap is off and the bud green: a growers' page, Venezuela (weak source); days common practice, no source",
    },
    {
      name: "Bud break",
      after: "Cut back",
      days: [5, 10, 21],
      source: `${usual.COMMON}. Budding shows shoots later than a week after grafting: Kouassi et al. 2018`,
    },
    {
      ...usual.READY,
      days: [115, 130, 145],
      source: `Days: Trop. Agric. 53(4), 5-6 months from sowing, less a rootstock of 35 days. ${usual.BED_LOSS}`,
    },
    ...usual.beforeGrafting(null),
    ...usual.BEFORE_READY,
    ...cocoaCare,
    usual.shootsBelow(),
  ],
};
