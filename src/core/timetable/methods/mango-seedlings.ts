import type { StepDescription } from "../method-description";
import * as usual from "./usual";

/**
 * How mango stones are sown and come up, whatever is grafted on the seedlings later.
 *
 * @param sown what each stone needs where it is sown, and why
 */
export const mangoSeedlings = (
  sown: Pick<StepDescription, "needs" | "source">,
): readonly StepDescription[] => [
  {
    name: "Sowing",
    ...usual.START,
    caution: usual.TREATED_SEED,
    ...sown,
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
