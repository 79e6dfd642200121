import type { StepDescription } from "../method-description";
import { MOST_DAYS } from "../step-row";

/** How every method starts: with a count, on the day from which the others are counted. */
export const START = { after: null, days: [0, 0, 0], counted: true } as const;

/** Said of every value that nobody has published. */
export const COMMON = "Common practice, no source";

export const BLADES =
  "Blades: cut away from the body, keep knives sheathed, clean and disinfect between stocks as the product's label says. Strong alcohol burns and catches fire: no flame near it.";

export const SCION_WOOD =
  "Moving scion wood between farms may need a plant-health permit: ask first.";

export const RELEASE_BLADES =
  "Blades: slit the wrap on the side away from the union and away from the hand.";

export const FIRST_RELEASE = {
  name: "First release",
  after: "Grafting",
  caution: RELEASE_BLADES,
} as const;

export const TREATED_SEED = "Wash hands after handling treated seed; read the label.";

export const MOVING_PLANTS =
  "Moving plants may spread pests and need a plant-health certificate: follow the rules of the place they leave and the place they go to.";

/** Seed sown where its seedlings stay until they are grafted. */
export const SOWING = { name: "Sowing", ...START, caution: TREATED_SEED } as const;
/** The same, in bags. */
export const SOWING_IN_BAGS = { ...SOWING, needs: "seed 1; bag 1", source: COMMON } as const;

export const GERMINATION = { name: "Germination", after: "Sowing", counted: true } as const;

export const TAKE_COUNT = { name: "Take count", after: "Grafting", counted: true } as const;
/**
 * A count of takes whose share has a source of its own.
 *
 * @param from where its days, left out where nobody published them, and what is kept are from
 */
export const takeCount = (
  days: StepDescription["days"],
  keptOf100: number,
  from: { readonly days?: string; readonly kept: string },
): StepDescription => ({
  ...TAKE_COUNT,
  days,
  keptOf100,
  source: `Days: ${from.days ?? COMMON.toLowerCase()}. Kept: ${from.kept}`,
});

/** What is kept from the last count to ready where a crop has no figure of its own. */
const BED_LOSS =
  "Kept: bed loss 10 %, Siyag 2014 Table 2.3 row F1, tree nurseries in general (weak for this crop)";
/**
 * The last step, then.
 *
 * @param daysFrom where its days are from; left out where nobody published them
 */
export const ready = (
  days: StepDescription["days"],
  daysFrom: string = COMMON.toLowerCase(),
): StepDescription => ({
  name: "Ready",
  after: "Grafting",
  days,
  counted: true,
  keptOf100: 90,
  isGeneralShare: true,
  caution: MOVING_PLANTS,
  source: `Days: ${daysFrom}. ${BED_LOSS}`,
});

/** What is kept from germination to grafting where a crop has no figure of its own. */
export const GRADE_OUT =
  "Kept: grade-out 20 %, Siyag 2014 Table 2.3, tree nurseries in general (weak for this crop)";
/** The grafting of the seedlings that are left, then; its source is GRADE_OUT. */
export const GRADED_GRAFTING = {
  name: "Grafting",
  counted: true,
  keptOf100: 80,
  isGeneralShare: true,
  caution: `${BLADES} ${SCION_WOOD}`,
} as const;

/** Wraps that were opened once bind again as the union thickens. */
export const SECOND_RELEASE = {
  name: "Second release",
  after: "Grafting",
  caution: RELEASE_BLADES,
} as const;

/** What starts the bud of a budded stock; the trade lops it, bends it over or cuts it off. */
export const CUT_BACK = { name: "Cut back", caution: BLADES } as const;

const AHEAD = { caution: "", source: COMMON } as const;

/**
 * Work ahead of a grafting, as days before it.
 *
 * @param defoliated the days on which leaves are clipped from the shoots to be cut; null for buds, whose
 *   leaves are clipped as they are cut
 */
export const beforeGrafting = (
  defoliated: Pick<StepDescription, "days" | "source"> | null,
): readonly StepDescription[] => [
  ...(defoliated === null ? [] : [{ name: "Defoliate scions", after: "Grafting", ...defoliated }]),
  {
    name: defoliated === null ? "Cut budwood" : "Cut scions",
    after: "Grafting",
    days: [-1, 0, 0],
    caution: GRADED_GRAFTING.caution,
    source: `On the day, the evening before at most: ${COMMON.toLowerCase()}`,
  },
];

/** Work ahead of the day on which plants are ready. */
export const BEFORE_READY: readonly StepDescription[] = [
  { ...AHEAD, name: "Harden off", after: "Ready", days: [-21, -21, -19] },
  {
    ...AHEAD,
    name: "Grading",
    after: "Ready",
    days: [-4, -3, -2],
    source: `By height, stem and union: ${COMMON.toLowerCase()}`,
  },
];

export const SPRAYS =
  "Sprays: only products registered for the crop, by a trained person, as the label says.";

const ALL_ALONG = { until: "Ready", source: COMMON } as const;

/**
 * Care that is repeated from the start of a method till its plants are ready, in the order in which one
 * goes through the beds.
 *
 * @param watering where it is published how often
 */
export const care = (
  after: string,
  watering: Pick<StepDescription, "source"> = ALL_ALONG,
): readonly StepDescription[] => [
  { ...ALL_ALONG, ...watering, name: "Watering", after, every: 2, days: [0, 0, MOST_DAYS] },
  { ...ALL_ALONG, name: "Weeding", after, every: 14, days: [14, 14, MOST_DAYS] },
  {
    ...ALL_ALONG,
    name: "Feeding",
    after,
    every: 28,
    days: [28, 28, MOST_DAYS],
    caution: "Fertilizer: how much and how safely is on its label.",
  },
  {
    ...ALL_ALONG,
    name: "Pests and diseases",
    after,
    every: 7,
    days: [7, 7, MOST_DAYS],
    kind: "look",
    caution: SPRAYS,
  },
];

const WEEKLY = "Weekly for three months: common practice, no source";

/**
 * The commonest way to sell a rootstock is to leave its shoots.
 *
 * @param said who else tells to take them off; left out where nobody was found
 */
export const shootsBelow = (said?: string): StepDescription => ({
  name: "Shoots below the union",
  after: "Grafting",
  every: 7,
  days: [14, 14, 91],
  source: said === undefined ? WEEKLY : `${said} ${WEEKLY}`,
});

/** What is said at a step of whichever crop, by its key, where a nursery's own timetable says nothing. */
export const USUAL_CAUTIONS: ReadonlyMap<string, string> = new Map([
  ["sowing", TREATED_SEED],
  ["cuttings set", BLADES],
  ["grafting", GRADED_GRAFTING.caution],
  ["first release", RELEASE_BLADES],
  ["flush hardening", SPRAYS],
  ["cut back", BLADES],
  ["ready", MOVING_PLANTS],
]);
