import type { StepDescription } from "../method-description";
import * as usual from "./usual";

/** How mango stones are sown and come up, whatever is grafted on the seedlings later. */
export const mangoSeedlings: readonly StepDescription[] = [
  {
    name: "Sowing",
    ...usual.START,
    needs: "stone 1; bag 1",
    caution: usual.TREATED_SEED,
    source: usual.COMMON,
  },
  {
    name: "Germination",
    after: "Sowing",
    days: [10, 15, 20],
    counted: true,
    keptOf100: 70,
    source:
      "Days: ikisan, a farming page (within 20, weak source); from and usual common practice, no source. Kept: common practice, no source",
  },
];
