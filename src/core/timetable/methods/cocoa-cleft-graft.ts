import { inches } from "../lengths";
import type { MethodDescription } from "../method-description";
import type { PracticeMeasure } from "../practice";
import * as usual from "./usual";

/** Cocoa raised from seed and grafted by cleft in the nursery at about three months. */
export const cocoaCleftGraft: MethodDescription = {
  name: "Cocoa cleft graft",
  steps: [
    {
      name: "Sowing",
      ...usual.START,
      needs: `seed 1; pod ${Math.round(1e4 / 35.3) / 1e4}; bag 1; potting mix 1.43 l`,
      caution:
        "Sow within two days of opening the pod, or wash the seed clean of pulp. Wash hands after handling treated seed; read the label.",
      source:
        "35.3 seeds a pod: Trop. Agric. 49(2), Amelonado, Nigeria, the most of four varieties: others need more pods. Bag 15 x 23 cm: CPCRI; 1.43 l by geometry when filled to 20 cm. Washing: J. Botany 2017:1938359, Ghana: unwashed seed came up 80-100 % for 2 days only, washed for 21",
    },
    {
      name: "Germination",
      after: "Sowing",
      days: [7, 10, 14],
      counted: true,
      keptOf100: 85,
      source:
        "Days: CPCRI (10), The Hindu 2004 quoting CPCRI (10-15); up to 14 common practice, no source. Kept: Ndubuaku 2003, Trop. Agric. 80(1), 85 % in beds",
    },
    {
      name: "Grafting",
      after: "Sowing",
      days: [75, 90, 120],
      counted: true,
      keptOf100: 80,
      needs: `scion 1; wrap strip ${inches(15)} cm`,
      caution: `${usual.BLADES} ${usual.SCION_WOOD}`,
      source:
        "Days: N'zi et al. 2023, Heliyon 9(8):e18732 (start at 3 months); CPCRI (3-4 months); IASRI e-course (2-3 months). Kept: grade-out 20 %, Siyag 2014 Table 2.3, tree nurseries in general (weak for cocoa). Wrap: common practice, no source. Scions wasted, and what blades are cleaned with: no amount published, so not in Needs; add your own",
    },
    {
      ...usual.FIRST_RELEASE,
      days: [12, 14, 18],
      source: usual.COMMON,
    },
    {
      name: "Bud break",
      after: "First release",
      days: [10, 14, 21],
      source: `${usual.COMMON}. First growth 10-15 days after grafting itself is reported: Ridwan et al. 2015`,
    },
    {
      name: "Take count",
      after: "Grafting",
      days: [28, 30, 35],
      counted: true,
      keptOf100: 75,
      source:
        "Days: IASRI e-course (union within 30), Tchatchoua et al. 2023 (scored from day 28). Kept: IASRI 60-80 %, CPCRI 80 %; 75 lies between",
    },
    { name: "First flush", after: "First release", days: [21, 28, 35], source: usual.COMMON },
    {
      name: "Flush hardening",
      after: "Grafting",
      days: [40, 44, 56],
      caution: usual.SPRAYS,
      source: usual.COMMON,
    },
    { name: "Branching", after: "Grafting", days: [50, 60, 75], source: usual.COMMON },
    { name: "Union closed", after: "Grafting", days: [80, 90, 105], source: usual.COMMON },
    {
      name: "Ready",
      after: "Grafting",
      days: [105, 112, 122],
      counted: true,
      keptOf100: 90,
      caution: usual.MOVING_PLANTS,
      source: `Days: ${usual.COMMON.toLowerCase()}; IASRI e-course has 90. Kept: bed loss 10 %, Siyag 2014 Table 2.3 row F1, tree nurseries in general (weak for cocoa)`,
    },
  ],
};

/** How the work is measured out by hand. */
export const cocoaCleftGraftMeasures: readonly PracticeMeasure[] = [
  ofGrafting("stock cut above the soil", [inches(12), inches(15)], "cm"),
  ofGrafting("cleft, and wedge of the scion", [inches(1.5), inches(2)], "cm"),
  ofGrafting("scion, from the second-last flush", [inches(5), inches(6)], "cm"),
  ofGrafting("buds on the scion", [5, 6], "pieces"),
  ofGrafting("width of the wrap strip", [inches(1.5), inches(1.5)], "cm"),
  ofGrafting("length of the wrap strip, about", [inches(15), inches(15)], "cm"),
];

function ofGrafting(
  measure: string,
  [from, to]: readonly [from: number, to: number],
  unit: PracticeMeasure["unit"],
): PracticeMeasure {
  return { step: "Grafting", measure, from, to, unit, source: usual.COMMON };
}
