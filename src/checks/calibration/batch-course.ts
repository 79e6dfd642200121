import { type Chance, chanceOf } from "./chance";
import { graftersOn, type NurseryTruth, seasonOn, shockOn, type Variety } from "./nursery-truth";
import { STEP, STEPS } from "./simulated-steps";

/** What truly happens to a batch, whether or not anybody writes it down. */
export interface BatchCourse {
  readonly number: number;
  readonly variety: string;
  readonly grafter: string;
  /** Civil day on which each step is seen to be done, by place in STEPS; null when it never is. */
  readonly days: readonly (number | null)[];
  /** Plants at each counted step; null at the others, and after a batch is lost. */
  readonly plants: readonly (number | null)[];
  /** The counted step that no plant passed; null for a batch that reaches ready. */
  readonly lostAt: number | null;
  /** Day on which the batch is seen to be ready; null when it is lost. */
  readonly readyDay: number | null;
  /** 0 when it is lost. */
  readonly readyPlants: number;
  /** Day on which it is settled what becomes of the batch: ready, or lost. */
  readonly settledOn: number;
}

/** Mean days and variation of what follows grafting, each after the one before. */
const CHAIN: readonly (readonly [step: number, meanDays: number, variation: number])[] = [
  [STEP.firstRelease, 14, 0.08],
  [STEP.budBreak, 14, 0.15],
  [STEP.firstFlush, 13, 0.12],
  [STEP.flushHardening, 5, 0.4],
  [STEP.branching, 15.5, 0.14],
  [STEP.unionClosed, 28, 0.1],
  [STEP.ready, 22, 0.11],
];
const MEAN_GERMINATION = 9.5;
const MEAN_SEEDLING = 85;

/**
 * Runs one batch of a nursery from its sowing to its end.
 *
 * @param seeds sown; as many as the nursery happens to sow, if left out
 */
export function batchCourse(
  truth: NurseryTruth,
  {
    number,
    sownOn,
    seeds = null,
  }: { readonly number: number; readonly sownOn: number; readonly seeds?: number | null },
): BatchCourse {
  const chance = chanceOf(truth.seed, 2, number);
  const variety = chance.pick(truth.varieties);
  // Whoever grafts is known by the sowing's day: nearly three months before.
  const grafter = chance.pick(graftersOn(truth, sownOn + MEAN_GERMINATION + MEAN_SEEDLING));
  const days = stepDays(chance, truth, { number, variety, sownOn });
  const plants = countedPlants(chance, truth, {
    variety,
    grafterTake: grafter.take,
    days,
    seedsAsked: seeds,
  });
  const facts = { number, variety: variety.name, grafter: grafter.name };
  const { lostAt, lostOn } = loss(chance, truth, { days, plants });
  if (lostAt !== null) return { ...facts, lostAt, ...lost({ days, plants, lostAt, lostOn }) };
  const readyDay = days[STEP.ready] as number;
  const readyPlants = plants[STEP.ready] as number;
  return { ...facts, days, plants, lostAt, readyDay, readyPlants, settledOn: readyDay };
}

/** Whether, where and when a batch is lost: emptied by its shares, or all at once by a mishap. */
function loss(
  chance: Chance,
  truth: NurseryTruth,
  {
    days,
    plants,
  }: { readonly days: readonly number[]; readonly plants: readonly (number | null)[] },
): { lostAt: number; lostOn: number } | { lostAt: null; lostOn: null } {
  const mishap = chance.happens(truth.lostBatches);
  const emptied = plants.indexOf(0);
  if (emptied !== -1) return { lostAt: emptied, lostOn: days[emptied] as number };
  if (!mishap) return { lostAt: null, lostOn: null };
  const [before, lostAt] = chance.pick([
    [STEP.sowing, STEP.germination],
    [STEP.grafting, STEP.takeCount],
    [STEP.takeCount, STEP.ready],
  ]) as [number, number];
  const lostOn = chance.whole((days[before] as number) + 1, days[lostAt] as number);
  return { lostAt, lostOn };
}

function stepDays(
  chance: Chance,
  truth: NurseryTruth,
  {
    number,
    variety,
    sownOn,
  }: { readonly number: number; readonly variety: Variety; readonly sownOn: number },
): readonly number[] {
  const { slow, season, shape, fitfulness, firstDay, dayDrift } = truth;
  const days: number[] = STEPS.map(() => sownOn);
  const ownSlow = 0.02 * fitfulness * chance.normal();
  const pace = (day: number) =>
    ownSlow +
    season.slow * seasonOn(truth, day) +
    (dayDrift * (day - firstDay)) / 365.25 +
    shockOn(truth, day).slow;
  const germination = chance.length(shape, MEAN_GERMINATION, 0.13 * fitfulness);
  const seedling = chance.length(shape, MEAN_SEEDLING, 0.09 * fitfulness);
  // Warmth tells most on seed and seedlings: the season counts double there.
  const early = pace(sownOn) + season.slow * seasonOn(truth, sownOn);
  days[STEP.germination] = seen(truth, sownOn + germination * Math.exp(slow.germination + early));
  const fit = sownOn + seedling * Math.exp(slow.seedling + early);
  // Grafting waits for scions and hands.
  const graftedOn = Math.ceil(fit + chance.between(0, 9));
  days[STEP.grafting] = graftedOn;
  days[STEP.takeCount] = graftedOn + truth.takesCountedAfter + chance.whole(0, 3);
  const stalledAt = chance.happens(truth.stalls) ? chance.whole(1, CHAIN.length - 1) : null;
  const longStall = longStallOf(truth, number);
  let at = graftedOn;
  CHAIN.forEach(([step, mean, variation], link) => {
    const own = chance.length(shape, mean, variation * fitfulness);
    at += own * Math.exp(slow.graft + variety.slow + pace(at));
    if (link === stalledAt) at += chance.length("gamma", 9, 0.6);
    if (link === longStall?.link) at += longStall.days;
    // Releasing is work, done on its day; the rest is seen when somebody looks.
    days[step] = step === STEP.firstRelease ? Math.ceil(at) : seen(truth, at);
  });
  return days;
}

/** Where a batch stands still for long, and how long: Pareto, of index 1.5 from 8 days on. */
function longStallOf(
  { seed, change }: NurseryTruth,
  number: number,
): { readonly link: number; readonly days: number } | null {
  const chance = chanceOf(seed, 23, number);
  if (!chance.happens(change?.longStalls ?? 0)) return null;
  const link = chance.whole(1, CHAIN.length - 1);
  return { link, days: Math.min(400, 8 * (1 - chance.share()) ** (-1 / 1.5)) };
}

/** The first day of inspection on which a step is seen to be done. */
function seen({ inspection: { everyDays, offset } }: NurseryTruth, moment: number): number {
  return offset + Math.ceil((moment - offset) / everyDays) * everyDays;
}

function countedPlants(
  chance: Chance,
  truth: NurseryTruth,
  {
    variety,
    grafterTake,
    days,
    seedsAsked,
  }: {
    readonly variety: Variety;
    readonly grafterTake: number;
    readonly days: readonly number[];
    readonly seedsAsked: number | null;
  },
): readonly (number | null)[] {
  const { logOdds, season, batchNoise } = truth;
  const sownOn = days[STEP.sowing] as number;
  const years = (sownOn - truth.firstDay) / 365.25;
  // Good seed and good care show at every step of a batch.
  const vigour = 0.15 * chance.normal();
  const badAt = chance.happens(truth.badBatches)
    ? chance.pick([STEP.germination, STEP.grafting, STEP.takeCount, STEP.takeCount, STEP.ready])
    : null;
  const seeds = Math.exp(
    Math.log(truth.usualSeeds) + 0.35 * chance.normal() + 0.5 * truth.growthPerYear * years,
  );
  const between = truth.change?.seeds;
  const usual = Math.max(12, Math.min(1500, Math.round(seeds)));
  let left =
    seedsAsked ??
    (between === undefined
      ? usual
      : Math.round(Math.exp(chance.between(Math.log(between[0]), Math.log(between[1])))));
  const plants: (number | null)[] = STEPS.map(() => null);
  plants[STEP.sowing] = left;
  const pass = (step: number, base: number) => {
    const bad = step === badAt ? chance.between(1, 2.5) : 0;
    const shock = shockOn(truth, days[step] as number).odds;
    const odds = base + vigour + batchNoise * chance.normal() - bad + shock;
    left = chance.binomial(left, 1 / (1 + Math.exp(-odds)));
    plants[step] = left;
  };
  const wave = (step: number) => season.odds * seasonOn(truth, days[step] as number);
  pass(STEP.germination, logOdds.germinated - 0.5 * wave(STEP.sowing));
  pass(STEP.grafting, logOdds.grafted);
  const take = variety.take + grafterTake + truth.drift * years - wave(STEP.grafting);
  pass(STEP.takeCount, logOdds.taken + take);
  pass(STEP.ready, logOdds.ready + variety.ready);
  return plants;
}

/** The course of a batch that is lost on some day, before a counted step. */
function lost({
  days,
  plants,
  lostAt,
  lostOn,
}: {
  readonly days: readonly number[];
  readonly plants: readonly (number | null)[];
  readonly lostAt: number;
  readonly lostOn: number;
}): Pick<BatchCourse, "days" | "plants" | "readyDay" | "readyPlants" | "settledOn"> {
  return {
    // The count that finds nothing left is still made, but nobody calls that ready.
    days: days.map((day, step) =>
      day < lostOn || (step === lostAt && step !== STEP.ready) ? day : null,
    ),
    plants: plants.map((count, step) => (step < lostAt ? count : step === lostAt ? 0 : null)),
    readyDay: null,
    readyPlants: 0,
    settledOn: lostOn,
  };
}
