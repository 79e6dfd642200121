import type { MethodDescription } from "../method-description";
import * as usual from "./usual";

/** Coffee seedlings grafted young, below the seed leaves. */
export const coffeeHypocotylGraft: MethodDescription = {
  name: "Coffee hypocotyl graft",
  steps: [
    {
      ...usual.SOWING,
      needs: "seed 1",
      source: `Stock seed, in beds: KAU sows in beds and bags later; ${usual.COMMON.toLowerCase()} for grafting`,
    },
    {
      name: "Scion sowing",
      after: "Sowing",
      days: [1, 7, 15],
      needs: "scion seed 1.1",
      caution: usual.TREATED_SEED,
      source: `A week or two behind the stock, which comes up more slowly: ${usual.COMMON.toLowerCase()}. 1.1 for each stock seed: both come up and are graded alike, a tenth of the tops is wasted`,
    },
    {
      ...usual.GERMINATION,
      days: [35, 40, 45],
      keptOf100: 80,
      source:
        "Days: KAU (40), a coffee page (6 weeks, weak source, not found again); the others and what is kept common practice, no source",
    },
    {
      ...usual.GRADED_GRAFTING,
      after: "Germination",
      days: [8, 15, 25],
      needs: "scion seedling 1.1; wrap strip 5 cm",
      source: `Days: common practice, no source. ${usual.GRADE_OUT}. Tops with a tenth for waste, wrap: common practice, no source`,
    },
    {
      ...usual.TAKE_COUNT,
      days: [20, 21, 28],
      keptOf100: 95,
      source:
        "Common practice, no source. Bravo et al. 2024 lost 0-2.1 % by day 21, but grafted regrowth of mother plants, not seedling tops",
    },
    {
      name: "Planting out",
      after: "Take count",
      days: [0, 3, 10],
      needs: "bag 1",
      source: `Into bags of 23 x 15 cm, KAU for seedlings; when ${usual.COMMON.toLowerCase()}`,
    },
    { name: "First flush", after: "Grafting", days: [30, 45, 60], source: usual.COMMON },
    usual.ready(
      [150, 200, 310],
      "KAU (4-5 or 12 months in the nursery), a nursery note of New South Wales (12 months, 6-8 when fast, weak source), all of seedlings; by is 12 months from sowing; from and usual common practice, no source",
    ),
    ...usual.BEFORE_READY,
    ...usual.care("Sowing"),
    usual.shootsBelow(),
  ],
};
