import type { MethodDescription } from "../method-description";
import * as usual from "./usual";

/** Citrus budded by a T cut on stocks of a pencil's thickness. */
export const citrusTBud: MethodDescription = {
  name: "Citrus T-bud",
  steps: [
    usual.SOWING_IN_BAGS,
    { ...usual.GERMINATION, days: [14, 21, 35], keptOf100: 80, source: usual.COMMON },
    {
      ...usual.GRADED_GRAFTING,
      after: "Sowing",
      days: [240, 300, 400],
      perPersonHour: 39,
      needs: "bud 1.1; wrap strip 20 cm",
      source: `Stock of a pencil's thickness: a Florida extension leaflet; days common practice, no source. ${usual.GRADE_OUT}. Per person-hour: Olaniyan et al., 1.34-1.54 minutes a bud without pauses. Wrap: the same leaflet (15-25 cm). Buds with a tenth for waste: common practice, no source`,
    },
    {
      ...usual.FIRST_RELEASE,
      days: [14, 18, 21],
      source:
        "A Florida extension leaflet (14-21), year not known; Sauls 2001, Texas (12-14); usual common practice, no source",
    },
    {
      name: "Bud break",
      after: "Cut back",
      days: [5, 10, 21],
      source:
        "Common practice, no source. Allahabad trial 2011 has lemon at 13.3 days from the budding, not said how forced",
    },
    {
      ...usual.CUT_BACK,
      after: "Grafting",
      days: [21, 35, 42],
      source:
        "Lop or bend: most buds lived when forced 5 or 6 weeks on, bending grew best, Olaniyan (NIHORT, trials of 1996-1999); than cutting off too: Bowman 1999; from 2-3 weeks on, when the wrap is off: the Florida leaflet",
    },
    usual.takeCount([24, 28, 35], 80, {
      kept: "Allahabad trial 2011, lemon in its best week, 81.67 %; set a little lower (our choice)",
    }),
    {
      name: "Stake the bud",
      after: "Bud break",
      days: [21, 35, 60],
      caution: usual.BLADES,
      source:
        "When it has grown several inches; what is left of the stock's top is cut off 1 cm above it: the Florida leaflet. Days common practice, no source",
    },
    usual.ready(
      [150, 168, 196],
      "Olaniyan et al., 24 weeks to 45 cm; the others common practice, no source",
    ),
    ...usual.beforeGrafting(null),
    ...usual.BEFORE_READY,
    ...usual.care("Sowing"),
    usual.shootsBelow("As they appear: the Florida leaflet."),
  ],
};
