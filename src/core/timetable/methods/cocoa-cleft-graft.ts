import { inches } from "../lengths";
import type { MethodDescription } from "../method-description";
import type { PracticeMeasure } from "../practice";
import { COCOA_SHADE, COCOA_SOWN, cocoaCare } from "./cocoa-seedlings";
import * as usual from "./usual";

const CPCRI = "CPCRI Kasaragod, cocoa germplasm page, soft wood grafting";
const IASRI = "IASRI e-course, propagation in cocoa";

/** Cocoa raised from seed and grafted by cleft in the nursery at about three months. */
export const cocoaCleftGraft: MethodDescription = {
  name: "Cocoa cleft graft",
  steps: [
    ...COCOA_SOWN,
    {
      ...usual.GRADED_GRAFTING,
      after: "Sowing",
      days: [75, 90, 120],
      needs: `scion 1; wrap strip ${inches(15)} cm`,
      source: `Days: N'zi et al. 2023, Heliyon 9(8):e18732 (start at 3 months); CPCRI (3-4 months); IASRI e-course (2-3 months). ${usual.GRADE_OUT}. Wrap: common practice, no source. Scions wasted, and what blades are cleaned with: no amount published, so not in Needs; add your own`,
    },
    { ...usual.FIRST_RELEASE, days: [12, 14, 18], source: usual.COMMON },
    {
      name: "Bud break",
      after: "Grafting",
      days: [10, 14, 28],
      source:
        "10-15 after grafting: Ridwan et al. 2015 (10.4), a trial at Palu 2025 (11.9-15.0, not looked up again); two weeks behind the first release, 28, common practice, no source",
    },
    usual.takeCount([28, 30, 35], 75, {
      days: "IASRI e-course (union within 30: callus has joined the two, the cut is still to be seen), Tchatchoua et al. 2023 (scored from day 28)",
      kept: "IASRI 60-80 %, CPCRI 80 %; 75 lies between",
    }),
    {
      name: "First flush",
      after: "Grafting",
      days: [35, 42, 49],
      source: `${usual.COMMON}: three to five weeks behind the first release`,
    },
    {
      name: "Flush hardening",
      after: "Grafting",
      days: [40, 44, 56],
      caution: usual.SPRAYS,
      source: usual.COMMON,
    },
    { name: "Branching", after: "Grafting", days: [50, 60, 75], source: usual.COMMON },
    {
      ...usual.SECOND_RELEASE,
      days: [42, 60, 75],
      source:
        "60: a farmers' video, Uganda (bindings off after 2 months, weak source); from and by common practice, no source",
    },
    {
      name: "Union closed",
      after: "Grafting",
      days: [80, 90, 105],
      source: `${usual.COMMON}: bark has closed over the cut, long after callus joined it at the take count`,
    },
    usual.ready([105, 112, 122], "common practice, no source; IASRI e-course has 90"),
    ...usual.beforeGrafting({
      days: [-10, -9, -8],
      source: `${usual.COMMON} for cocoa: 9 days are best for mango. Wood may wait 6 days: Larekeng et al.`,
    }),
    ...COCOA_SHADE,
    ...usual.BEFORE_READY,
    ...cocoaCare,
    usual.shootsBelow(),
  ],
};

/** How the work is measured out by hand: as many nurseries do it, and as it is published. */
export const cocoaCleftGraftMeasures: readonly PracticeMeasure[] = [
  ofGrafting("stock cut above the soil", [inches(12), inches(15)], "cm"),
  ofGrafting("cleft, and wedge of the scion", [inches(1.5), inches(2)], "cm"),
  { ...ofGrafting("cleft, and wedge of the scion", [2, 3], "cm"), source: CPCRI },
  ofGrafting("scion, from the second-last flush", [inches(5), inches(6)], "cm"),
  { ...ofGrafting("scion", [12, 15], "cm"), source: CPCRI },
  { ...ofGrafting("scion", [12, 14], "cm"), source: IASRI },
  ofGrafting("buds on the scion", [5, 6], "pieces"),
  { ...ofGrafting("buds on the scion", [2, 3], "pieces"), source: CPCRI },
  ofGrafting("width of the wrap strip", [inches(1.5), inches(1.5)], "cm"),
  { ...ofGrafting("width of the wrap strip", [1.5, 1.5], "cm"), source: `${CPCRI}; ${IASRI}` },
  ofGrafting("length of the wrap strip, about", [inches(15), inches(15)], "cm"),
];

function ofGrafting(
  measure: string,
  [from, to]: readonly [from: number, to: number],
  unit: PracticeMeasure["unit"],
): PracticeMeasure {
  return { step: "Grafting", measure, from, to, unit, source: usual.COMMON };
}
