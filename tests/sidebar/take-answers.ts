import type { CompareAnswer, TakesAnswer } from "../../src/workbook/sidebar-calls";

export const takes: TakesAnswer = {
  by: "Variety",
  columns: ["Variety", "Grafter", "Place"],
  rows: [
    {
      group: "Amberlow",
      batches: 2,
      grafted: 320,
      taken: 251,
      rate: 0.784,
      from: 0.694,
      to: 0.854,
      spread: 3.287,
      remark: null,
    },
    {
      group: "Brindlecap",
      batches: 0,
      grafted: 0,
      taken: 0,
      rate: null,
      from: null,
      to: null,
      spread: 3.287,
      remark: "1 batch not counted yet",
    },
  ],
};

const LIMITS = { low: 0.48, high: 0.98, usual: 0.73 };

export const compared: CompareAnswer = {
  by: "Grafter",
  evenFor: "Variety",
  columns: ["Variety", "Grafter", "Place"],
  evenFors: ["Variety", "Place", "Month", "Season", "Variety+Season", "Variety+Month"],
  people: "Grafter",
  compared: [
    {
      ...{ group: "Kesto", grafted: 3934, taken: 2749, rate: 0.699, expected: 0.764 },
      ...{ evened: 0.668, from: 0.624, to: 0.709, reading: "below the rest" },
    },
    {
      ...{ group: "Mirel", grafted: 3942, taken: 2556, rate: 0.648, expected: 0.646 },
      ...{ evened: 0.733, from: 0.685, to: 0.776, reading: "no clear difference" },
    },
    {
      ...{ group: "Kay Orrin", grafted: 4802, taken: 3805, rate: 0.792, expected: 0.751 },
      ...{ evened: 0.771, from: 0.732, to: 0.805, reading: "no clear difference" },
    },
    {
      ...{ group: "Kito", grafted: 104, taken: 80, rate: 0.769, expected: 0.769 },
      ...{ evened: null, from: null, to: null, reading: "too few to tell" },
    },
  ],
  remark:
    "Nobody to compare with: Kito in Rare (1 batch, counted but not judged). 5 batches not counted yet",
  period: "month",
  trend: [
    { period: "2026-06", grafted: 504, rate: 0.786, ...LIMITS, reading: "usual" },
    { period: "2026-07", grafted: 787, rate: 0.368, ...LIMITS, reading: "low" },
    { period: "2026-08", grafted: 438, rate: 0.719, ...LIMITS, reading: "usual" },
    { period: "2026-09", grafted: 721, rate: 0.846, ...LIMITS, reading: "usual" },
    {
      ...{ period: "2026-10, still open", grafted: 333, rate: 0.685 },
      ...{ usual: 0.73, low: 0.31, high: 1, reading: "usual" },
    },
    {
      ...{ period: "2026-11, still open", grafted: null, rate: null },
      ...{ usual: 0.73, low: null, high: null, reading: "" },
    },
  ],
  reasons: [
    {
      ...{ column: "Variety", groups: 5, explained: 0.211 },
      ...{ best: "Brindlecap (82 %)", worst: "Duskpod (55 %)" },
      reading: "goes with takes, also where the other columns are alike",
    },
    {
      ...{ column: "Grafter", groups: 4, explained: 0.072, best: "Kay Orrin (77 %)" },
      ...{
        worst: "Kesto (64 %)",
        reading: "goes with takes, but what else differed may be behind it",
      },
    },
    { column: "Place", groups: 4, explained: 0, best: "", worst: "", reading: "no clear link" },
    {
      ...{ column: "Method", groups: 1, explained: null, best: "", worst: "" },
      reading: "too few to tell",
    },
  ],
  reasonsRemark:
    "Going with takes is not causing them: what else changed at the same time? 5 batches not counted yet",
};
