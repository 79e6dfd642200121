import type { LossesAnswer } from "../../src/wire/losses";
import type { NamedText } from "../../src/wire/named-text";
import type { CompareAnswer, TakesAnswer } from "../../src/wire/takes";

/** A group that names nobody, and one that is a person. */
export const thing = (text: string): readonly NamedText[] => [{ text, initials: null }];
export const person = (text: string, initials: string): readonly NamedText[] => [
  { text, initials },
];

export const takes: TakesAnswer = {
  by: "Variety",
  columns: ["Variety", "Grafter", "Place"],
  rows: [
    {
      group: thing("Amberlow"),
      batches: 2,
      grafted: 320,
      taken: 251,
      rate: 0.784,
      from: 0.694,
      to: 0.854,
      spread: 3.287,
      remarks: [],
    },
    {
      group: thing("Brindlecap"),
      batches: 0,
      grafted: 0,
      taken: 0,
      rate: null,
      from: null,
      to: null,
      spread: 3.287,
      remarks: [{ code: "not-counted-yet", batches: 1 }],
    },
  ],
};

const lost = (
  stage: LossesAnswer["rows"][number]["stage"],
  plants: number,
  reason: string | null = null,
  more: Partial<LossesAnswer["rows"][number]> = {},
) => ({
  ...{ group: [], stage, step: null, reason, plants, ofStarted: plants / 900 },
  ...{ cost: ["started", "dispatched", "standing"].includes(stage) ? 0 : plants * 0.4 },
  ...more,
});

export const losses: LossesAnswer = {
  by: "",
  columns: ["Reason", "Variety", "Grafter", "Place", "Season"],
  isByReason: false,
  rows: [
    lost("started", 900),
    lost("not-come-up", 96),
    lost("not-come-up", 24, ""),
    lost("graded-out", 61, "thin stems"),
    lost("graded-out", 49),
    lost("not-taken", 150),
    lost("lost-later", 20, null, { step: "Potting on" }),
    lost("lost-later", 31, "root rot"),
    lost("lost-later", 12, "snails"),
    lost("unexplained", 7),
    lost("dispatched", 290),
    lost("standing", 160),
  ],
  notCounted: ["H26-051"],
  withoutMethod: [],
  leftOut: [],
  hasCosts: true,
  costRemark: "No price in the table: scion.",
};

const LIMITS = { low: 0.48, high: 0.98, usual: 0.73 };

export const compared: CompareAnswer = {
  by: "Grafter",
  evenFor: "Variety",
  columns: ["Variety", "Grafter", "Place"],
  evenFors: ["Variety", "Place", "Month", "Season", "Variety+Season", "Variety+Month"],
  compared: [
    {
      ...{ group: person("Kesto", "K."), grafted: 3934, taken: 2749, rate: 0.699, expected: 0.764 },
      ...{ evened: 0.668, from: 0.624, to: 0.709, reading: "below" },
    },
    {
      ...{ group: person("Mirel", "M."), grafted: 3942, taken: 2556, rate: 0.648, expected: 0.646 },
      ...{ evened: 0.733, from: 0.685, to: 0.776, reading: "alike" },
    },
    {
      ...{
        group: person("Kay Orrin", "K. O."),
        grafted: 4802,
        taken: 3805,
        rate: 0.792,
        expected: 0.751,
      },
      ...{ evened: 0.771, from: 0.732, to: 0.805, reading: "alike" },
    },
    {
      ...{ group: person("Kito", "K. 2"), grafted: 104, taken: 80, rate: 0.769, expected: 0.769 },
      ...{ evened: null, from: null, to: null, reading: "too few" },
    },
  ],
  alone: [{ group: person("Kito", "K. 2"), stratum: thing("Rare") }],
  aloneBatches: 1,
  remarks: [{ code: "not-counted-yet", batches: 5 }],
  period: "month",
  trend: [
    { period: "2026-06", isOpen: false, grafted: 504, rate: 0.786, ...LIMITS, reading: "usual" },
    { period: "2026-07", isOpen: false, grafted: 787, rate: 0.368, ...LIMITS, reading: "low" },
    { period: "2026-08", isOpen: false, grafted: 438, rate: 0.719, ...LIMITS, reading: "usual" },
    { period: "2026-09", isOpen: false, grafted: 721, rate: 0.846, ...LIMITS, reading: "usual" },
    {
      ...{ period: "2026-10", isOpen: true, grafted: 333, rate: 0.685 },
      ...{ usual: 0.73, low: 0.31, high: 1, reading: "usual" },
    },
    {
      ...{ period: "2026-11", isOpen: true, grafted: null, rate: null },
      ...{ usual: 0.73, low: null, high: null, reading: null },
    },
  ],
  reasons: [
    {
      ...{ column: "Variety", groups: 5, explained: 0.211, reading: "stays" },
      best: { name: { text: "Brindlecap", initials: null }, takeRate: 0.82 },
      worst: { name: { text: "Duskpod", initials: null }, takeRate: 0.55 },
    },
    {
      ...{ column: "Grafter", groups: 4, explained: 0.072, reading: "others may be behind" },
      best: { name: { text: "Kay Orrin", initials: "K. O." }, takeRate: 0.77 },
      worst: { name: { text: "Kesto", initials: "K." }, takeRate: 0.64 },
    },
    {
      ...{ column: "Place", groups: 4, explained: 0, best: null, worst: null },
      reading: "no clear link",
    },
    {
      ...{ column: "Method", groups: 1, explained: null, best: null, worst: null },
      reading: "too few to tell",
    },
  ],
  reasonsRemarks: [{ code: "not-cause" }, { code: "not-counted-yet", batches: 5 }],
};
