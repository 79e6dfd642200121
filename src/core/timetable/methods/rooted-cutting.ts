import type { MethodDescription } from "../method-description";
import * as usual from "./usual";

/** Cuttings set to root: a method without grafting. */
export const rootedCutting: MethodDescription = {
  name: "Rooted cutting",
  steps: [
    {
      name: "Cuttings set",
      ...usual.START,
      needs: "cutting 1",
      caution: `${usual.BLADES} Rooting powders: read the label, no bare hands.`,
      source: `${usual.COMMON}. Set in a bed or tray; bags are filled for those that rooted, at Potting on`,
    },
    {
      name: "Rooting",
      after: "Cuttings set",
      days: [28, 42, 60],
      counted: true,
      keptOf100: 70,
      source: usual.COMMON,
    },
    {
      name: "Potting on",
      after: "Rooting",
      days: [3, 7, 14],
      needs: "bag 1; potting mix 1.4 l",
      source: usual.COMMON,
    },
    { ...usual.ready([75, 100, 140]), after: "Potting on" },
    ...usual.BEFORE_READY,
    ...usual.care("Cuttings set"),
  ],
};
