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

/** What is kept from the last count to ready where a crop has no figure of its own. */
export const BED_LOSS =
  "Kept: bed loss 10 %, Siyag 2014 Table 2.3 row F1, tree nurseries in general (weak for this crop)";
/** The last step, then; its source is BED_LOSS. */
export const READY = {
  name: "Ready",
  after: "Grafting",
  counted: true,
  keptOf100: 90,
  caution: MOVING_PLANTS,
} as const;

/** What is kept from germination to grafting where a crop has no figure of its own. */
export const GRADE_OUT =
  "Kept: grade-out 20 %, Siyag 2014 Table 2.3, tree nurseries in general (weak for this crop)";
/** The seedlings that are grafted, then; its source is GRADE_OUT. */
export const GRADED = { counted: true, keptOf100: 80, caution: `${BLADES} ${SCION_WOOD}` } as const;

export const SPRAYS =
  "Sprays: only products registered for the crop, by a trained person, as the label says.";

/** What is said at a step of whichever crop, by its key, where a nursery's own timetable says nothing. */
export const USUAL_CAUTIONS: ReadonlyMap<string, string> = new Map([
  ["sowing", TREATED_SEED],
  ["cuttings set", BLADES],
  ["grafting", GRADED.caution],
  ["first release", RELEASE_BLADES],
  ["flush hardening", SPRAYS],
  ["cut back", BLADES],
  ["ready", MOVING_PLANTS],
]);
