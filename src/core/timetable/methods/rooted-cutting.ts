import type { MethodDescription } from "../method-description";
import { BED_LOSS, BLADES, COMMON, MOVING_PLANTS } from "./usual-words";

/** Cuttings set to root: a method without grafting. */
export const rootedCutting: MethodDescription = {
  name: "Rooted cutting",
  steps: [
    {
      name: "Cuttings set",
      after: null,
      days: [0, 0, 0],
      counted: true,
      needs: "cutting 1; bag 1",
      caution: `${BLADES} Rooting powders: read the label, no bare hands.`,
      source: COMMON,
    },
    {
      name: "Rooting",
      after: "Cuttings set",
      days: [28, 42, 60],
      counted: true,
      keptOf100: 70,
      source: COMMON,
    },
    {
      name: "Potting on",
      after: "Rooting",
      days: [3, 7, 14],
      needs: "potting mix 1.4 l",
      source: COMMON,
    },
    {
      name: "Ready",
      after: "Potting on",
      days: [75, 100, 140],
      counted: true,
      keptOf100: 90,
      caution: MOVING_PLANTS,
      source: `Days: ${COMMON.toLowerCase()}. ${BED_LOSS}`,
    },
  ],
};
