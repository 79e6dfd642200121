import type { StepDescription } from "../method-description";
import * as usual from "./usual";

/** How cocoa is sown and comes up, whatever is set on the seedlings later. */
export const COCOA_SOWN: readonly StepDescription[] = [
  {
    ...usual.SOWING,
    needs: `seed 1; pod ${Math.round(1e4 / 35.3) / 1e4}; bag 1; potting mix 1.43 l`,
    caution: `Sow within two days of opening the pod, or wash the seed clean of pulp. ${usual.TREATED_SEED}`,
    source:
      "35.3 seeds a pod: Trop. Agric. 49(2), Amelonado, Nigeria, the most of four varieties: others need more pods. Bag 15 x 23 cm: CPCRI; 1.43 l by geometry when filled to 20 cm. Washing: J. Botany 2017:1938359, Ghana: unwashed seed came up 80-100 % for 2 days only, washed for 21",
  },
  {
    ...usual.GERMINATION,
    days: [7, 10, 14],
    keptOf100: 85,
    source:
      "Days: CPCRI (10), The Hindu 2004 quoting CPCRI (10-15); from 7 and by 14 common practice, no source. Kept: Ndubuaku 2003, Trop. Agric. 80(1), 85 % in beds",
  },
];

/** How cocoa seedlings are cared for, whatever is set on them. */
export const cocoaCare: readonly StepDescription[] = usual.care("Sowing", {
  source: "On alternate days: CPCRI, The Hindu 2004",
});

/** How they are given room and light before they are grafted at about three months. */
export const COCOA_SHADE: readonly StepDescription[] = [
  {
    name: "Ease the shade",
    after: "Grafting",
    days: [-31, -30, -29],
    source:
      "70-80 % shade for the first two months, then less by and by: cacaogrow.com, Philippines (weak source); days common practice, no source",
  },
  {
    name: "Respacing",
    after: "Grafting",
    days: [-15, -14, -13],
    source: "Bags 10 cm apart: The Hindu 2004 quoting CPCRI; when common practice, no source",
  },
];
