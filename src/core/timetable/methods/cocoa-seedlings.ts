import type { StepDescription } from "../method-description";
import * as usual from "./usual";

/** How cocoa seedlings are cared for, whatever is set on them. */
export const cocoaCare: readonly StepDescription[] = usual.care("Sowing", {
  source: "On alternate days: CPCRI, The Hindu 2004",
});

/** How they are given room and light before they are grafted at about three months. */
export const COCOA_SHADE: readonly StepDescription[] = [
  {
    name: "Ease the shade",
    after: "Grafting",
    days: [-31, -30, -29],
    source:
      "70-80 % shade for the first two months, then less by and by: cacaogrow.com, Philippines (weak source); days common practice, no source",
  },
  {
    name: "Respacing",
    after: "Grafting",
    days: [-15, -14, -13],
    source: "Bags 10 cm apart: The Hindu 2004 quoting CPCRI; when common practice, no source",
  },
];
