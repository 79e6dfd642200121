import type { MethodDescription } from "../method-description";
import * as usual from "./usual";

/** Avocado grafted by cleft on seedlings of about four months. */
export const avocadoCleftGraft: MethodDescription = {
  name: "Avocado cleft graft",
  steps: [
    { ...usual.SOWING, needs: "stone 1; bag 1", source: usual.COMMON },
    { ...usual.GERMINATION, days: [21, 35, 50], keptOf100: 75, source: usual.COMMON },
    {
      ...usual.GRADED_GRAFTING,
      after: "Sowing",
      days: [90, 120, 150],
      needs: "scion 1.1; wrap strip 25 cm",
      source: `Days: 4-6 months (conocimientosweb.net, weak source); growers' pages have about 120 (one not found again); from and by common practice, no source. ${usual.GRADE_OUT}. Scions with a tenth for waste, wrap: common practice, no source`,
    },
    { name: "Bud break", after: "Grafting", days: [18, 25, 35], source: usual.COMMON },
    {
      ...usual.FIRST_RELEASE,
      days: [28, 35, 42],
      source: "Growers' pages (weak source), 4-6 weeks to heal; usual common practice, no source",
    },
    usual.takeCount([40, 45, 60], 45, {
      kept: "cleft grafts in India 32.5 % the year round, 60 and 70 % in the two best months (Tripathi and Karunakaran 2019), in Pakistan 27 % (Kasana et al. 2024); Uganda 19 to 94 % by rootstock (Natuhwera 2025, a thesis). 45 lies between (our choice, weak)",
    }),
    { ...usual.SECOND_RELEASE, days: [60, 75, 100], source: usual.COMMON },
    usual.ready([120, 150, 210], "4-6 months (the same page); by common practice, no source"),
    ...usual.beforeGrafting({
      days: [-10, -9, -8],
      source: `${usual.COMMON} for avocado: 9 days are best for mango`,
    }),
    ...usual.BEFORE_READY,
    ...usual.care("Sowing"),
    usual.shootsBelow(),
  ],
};
