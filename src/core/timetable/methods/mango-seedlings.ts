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
  { ...usual.SOWING, ...sown },
  {
    ...usual.GERMINATION,
    days: [10, 15, 20],
    keptOf100: 70,
    source:
      "Days: ikisan, a farming page (within 20, weak source); from and usual common practice, no source. Kept: common practice, no source",
  },
];

/** The leaves of a shoot are clipped on the tree, so that its buds swell before it is cut. */
export const MANGO_DEFOLIATED = {
  days: [-10, -9, -7],
  source:
    "9 best of 0, 3, 6 and 9 days: Akter et al., Progr. Agric. 27(3), doi:10.3329/pa.v27i3.30803, Bangladesh (91.6 % took, 85.8 at 0); 7-10: growers' pages (weak source)",
} as const;
