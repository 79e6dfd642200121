import type { MethodDescription } from "../method-description";
import { MANGO_DEFOLIATED, mangoSeedlings } from "./mango-seedlings";
import * as usual from "./usual";

/** Mango grafted by cleft on seedlings of about eight months. */
export const mangoCleftGraft: MethodDescription = {
  name: "Mango cleft graft",
  steps: [
    ...mangoSeedlings({ needs: "stone 1; bag 1", source: usual.COMMON }),
    {
      ...usual.GRADED_GRAFTING,
      after: "Sowing",
      days: [180, 240, 300],
      needs: "scion 1.1; wrap strip 25 cm",
      source: `Days: Sabeky 2005, seedlings of 8 months in Iran (dry subtropics); in the humid tropics pencil thick from 3 to 6 months (common practice, no source); earliest and latest common practice, no source. ${usual.GRADE_OUT}. Scions with a tenth for waste, wrap: common practice, no source`,
    },
    {
      name: "Bud break",
      after: "Grafting",
      days: [9, 12, 18],
      source:
        "Khushi et al. 2019 (9.4-12.1); Shivandu et al. 2025 (16.4); Cogent Food Agric. 2019 (17.4)",
    },
    { ...usual.FIRST_RELEASE, days: [21, 30, 40], source: usual.COMMON },
    usual.takeCount([45, 60, 90], 70, {
      days: "Sabeky 2005 scored at 90; earlier common practice, no source",
      kept: "64 % softwood and 66 % side (Sabeky 2005, Iran), 68 % in August in Himachal Pradesh (Shivandu et al. 2025), 96 % in April in Bangladesh (Khushi et al. 2019); 70 lies between",
    }),
    { ...usual.SECOND_RELEASE, days: [60, 75, 95], source: usual.COMMON },
    usual.ready([150, 180, 240]),
    ...usual.beforeGrafting(MANGO_DEFOLIATED),
    ...usual.BEFORE_READY,
    ...usual.care("Sowing"),
    usual.shootsBelow(),
  ],
};
