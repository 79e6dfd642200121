import { describe, expect, it } from "vitest";
import { builtInMethods } from "../../../src/core/timetable/built-in-methods";
import type { StepDescription } from "../../../src/core/timetable/method-description";

type Figure = "from" | "usual" | "by" | "kept" | "per hour";

/**
 * Figures of the built-in methods that somebody has published, each beside its source. Months are of
 * 30 days, weeks of 7; minutes, and days with decimals, are brought to the nearest whole figure.
 */
const PUBLISHED: readonly (readonly [
  method: string,
  step: string,
  figures: Partial<Record<Figure, number>>,
  source: string,
])[] = [
  [
    "Avocado cleft graft",
    "Grafting",
    { usual: 120 },
    "conocimientosweb.net, a coffee programme's page: 4-6 months; smartfarmerkenya.com: about 120 d; both weak",
  ],
  [
    "Avocado cleft graft",
    "Ready",
    { from: 120 },
    "conocimientosweb.net, weak: planted out 4-6 months after grafting",
  ],
  ["Avocado cleft graft", "First release", { from: 28, by: 42 }, "growers' pages, weak: 4-6 weeks"],
  // 12 months: 32.5 % mean, 60 % in March, 70 % in September; halfway between the year round and the second best.
  ["Avocado cleft graft", "Take count", { kept: 45 }, "Tripathi and Karunakaran 2019: 32.5-60 %"],
  [
    "Cashew softwood graft",
    "Germination",
    { from: 5, by: 20 },
    "IASRI e-course 103703, Narina et al. 2020 and others: 5-8, 7-10, 15-20 d",
  ],
  [
    "Cashew softwood graft",
    "Grafting",
    { from: 30, by: 60 },
    "the same: 30-40, 35-45 d; Yeboah et al. 2020 J. Agric. Sci. 12(8):257: 60 d",
  ],
  [
    "Cashew softwood graft",
    "Take count",
    { kept: 55 },
    "Narina et al. 2020 Acta Sci. Nutr. Health 4(2): 50.1-59.81 %, their middle",
  ],
  [
    "Cashew softwood graft",
    "Ready",
    { from: 150, by: 180 },
    "IASRI e-course and others: 5-6 months",
  ],
  [
    "Citrus T-bud",
    "Grafting",
    { "per hour": 39 },
    "Olaniyan et al., Moor J. Agric. Res.: up to 1.54 minutes a bud",
  ],
  ["Citrus T-bud", "First release", { from: 14, by: 21 }, "Florida extension leaflet: 14-21 d"],
  ["Citrus T-bud", "Ready", { usual: 168 }, "Olaniyan et al.: 24 weeks to 45 cm"],
  [
    "Cocoa green patch bud",
    "Germination",
    { usual: 10, kept: 85 },
    "CPCRI: 10 d; Ndubuaku 2003 Trop. Agric. 80(1): 85 %",
  ],
  ["Cocoa green patch bud", "Grafting", { from: 14, by: 42 }, "Trop. Agric. 53(4): 2-6 weeks"],
  [
    "Cocoa green patch bud",
    "Ready",
    { from: 115, by: 145 },
    "Trop. Agric. 53(4): 5-6 months from sowing, less a rootstock of 35 d",
  ],
  ["Coffee hypocotyl graft", "Germination", { usual: 40 }, "KAU agritech node 431: 40 d"],
  ["Coffee hypocotyl graft", "Take count", { usual: 21 }, "Bravo et al. 2024: scored at 21 d"],
  [
    "Coffee hypocotyl graft",
    "Ready",
    { by: 310 },
    "KAU and a New South Wales nursery note: 12 months from sowing, less 40 and 15 d",
  ],
  ["Mango cleft graft", "Germination", { by: 20 }, "ikisan: within 20 d"],
  ["Mango cleft graft", "Grafting", { usual: 240 }, "Sabeky 2005: seedlings of 8 months"],
  ["Mango cleft graft", "Bud break", { from: 9, usual: 12 }, "Khushi et al. 2019: 9.44-12.14 d"],
  ["Mango cleft graft", "Take count", { by: 90 }, "Sabeky 2005: scored at 90 d"],
  ["Mango stone graft", "Bud break", { from: 15, by: 20 }, "TNAU 2015: 15-20 d"],
  ["Mango stone graft", "First release", { from: 21, by: 30 }, "a grower's page, weak: 21-30 d"],
  ["Mango stone graft", "Take count", { kept: 75 }, "TNAU 2015: 75-80 %"],
  [
    "Rubber budded stump",
    "Grafting",
    { from: 75, by: 240 },
    "Ramananathan et al. 1991, stocks for budded stumps: 2.5-8 months",
  ],
  ["Rubber green bud", "First release", { usual: 21 }, "SMIARC Technoguide 17, 2007: 21 d"],
  ["Rubber green bud", "Take count", { kept: 95 }, "Ramananathan et al. 1991: above 95 %"],
  ["Rubber green bud", "Cut back", { from: 21 }, "SMIARC Technoguide 17, 2007: 3 weeks"],
  ["Rubber green bud", "Bud break", { from: 7 }, "SMIARC Technoguide 17, 2007: 7-10 d"],
  [
    "Rubber green bud",
    "Ready",
    { from: 84, usual: 91 },
    "SMIARC Technoguide 17, 2007: second whorl at 6 weeks, three whorls 6-8 weeks later",
  ],
];

function figureOf(step: StepDescription | undefined, figure: Figure): number | undefined {
  if (figure === "kept") return step?.keptOf100;
  if (figure === "per hour") return step?.perPersonHour;
  return step?.days[{ from: 0, usual: 1, by: 2 }[figure]];
}

describe("published values", () => {
  it.each(PUBLISHED)("%s, %s: %j (%#)", (name, step, figures, source) => {
    const method = builtInMethods.find((one) => one.name === name);
    const found = method?.steps.find((one) => one.name === step);
    for (const [figure, value] of Object.entries(figures)) {
      expect(figureOf(found, figure as Figure), `${figure}, ${source}`).toBe(value);
    }
  });
});
