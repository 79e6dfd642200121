import type { MethodDescription } from "../method-description";
import { COCOA_SOWN, cocoaCare } from "./cocoa-seedlings";
import * as usual from "./usual";

/** Cocoa raised from seed and budded green by patch at about five weeks. */
export const cocoaGreenPatchBud: MethodDescription = {
  name: "Cocoa green patch bud",
  steps: [
    ...COCOA_SOWN,
    {
      ...usual.GRADED_GRAFTING,
      after: "Sowing",
      days: [14, 35, 42],
      needs: "bud 1.1; wrap strip 15 cm",
      source: `Days: Trop. Agric. 53(4), rootstocks of 2-6 weeks; usual common practice, no source. ${usual.GRADE_OUT}. Buds with a tenth for waste, wrap: common practice, no source`,
    },
    {
      ...usual.FIRST_RELEASE,
      days: [14, 21, 28],
      source: "15: a growers' page, Venezuela (weak source); the others common practice, no source",
    },
    usual.takeCount([21, 28, 35], 85, {
      kept: "90-100 % in a glasshouse, Trop. Agric. 53(4); set lower for a nursery (our choice)",
    }),
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
    usual.ready(
      [115, 130, 145],
      "Trop. Agric. 53(4), 5-6 months from sowing, less a rootstock of 35 days",
    ),
    ...usual.beforeGrafting(null),
    ...usual.BEFORE_READY,
    ...cocoaCare,
    usual.shootsBelow(),
  ],
};
