import type { MethodDescription } from "../method-description";
import { MANGO_DEFOLIATED, mangoSeedlings } from "./mango-seedlings";
import * as usual from "./usual";

/** Mango grafted on the young shoot while the stone still feeds it. */
export const mangoStoneGraft: MethodDescription = {
  name: "Mango stone graft",
  steps: [
    ...mangoSeedlings({
      needs: "stone 1",
      source: "Sown in beds, bagged when grafted: TNAU Agritech 2015",
    }),
    {
      ...usual.GRADED_GRAFTING,
      after: "Germination",
      days: [5, 10, 15],
      needs: "scion 1.1; wrap strip 20 cm; bag 1",
      source: `Days: seedlings with coppery leaves, TNAU 2015; Singh et al. 2014, J. Appl. Nat. Sci. 6(2) (best at 5-10); by 15 common practice, no source. ${usual.GRADE_OUT}. Bag: lifted, grafted, then bagged, TNAU. Scions with a tenth for waste, wrap: common practice, no source`,
    },
    {
      name: "Bud break",
      after: "Grafting",
      days: [15, 18, 20],
      source: "TNAU Agritech 2015, stone grafting (15-20); usual lies between",
    },
    {
      ...usual.FIRST_RELEASE,
      days: [21, 26, 30],
      source: "Healed at 21-30: a grower's page (weak source); usual common practice, no source",
    },
    usual.takeCount([28, 32, 40], 75, { kept: "TNAU 2015, 75-80 %" }),
    { ...usual.SECOND_RELEASE, days: [45, 60, 80], source: usual.COMMON },
    usual.ready([150, 180, 240]),
    ...usual.beforeGrafting(MANGO_DEFOLIATED),
    ...usual.BEFORE_READY,
    ...usual.care("Sowing"),
    usual.shootsBelow("TNAU Agritech 2015: sprouts off while the scion starts."),
  ],
};
