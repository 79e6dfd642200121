import { type Chance, chanceOf } from "../calibration/chance";

/** A batch as it was counted. */
export interface InventedBatch {
  readonly grafter: string;
  readonly variety: string;
  /** A civil day. */
  readonly graftedOn: number;
  readonly grafted: number;
  readonly taken: number;
}

export interface InventedTakes {
  readonly grafters: number;
  /** Batches of each grafter. */
  readonly batchesEach: number;
  /** Added to the first grafter's share of takes: −0.15 is 15 points lower. */
  readonly firstDiffers: number;
  /** "even": everyone grafts every variety alike; "uneven": the first mostly the hardest one. */
  readonly varietiesShared: "even" | "uneven";
  /** Height of the season's wave in log odds, at most. */
  readonly season: number;
  readonly days: number;
  /** From this day on, after the first, every take is so much less likely; null for never. */
  readonly fall: { readonly afterDays: number; readonly share: number } | null;
}

export const FIRST_DAY = 20_089; // 2025-01-01
const VARIETIES = ["Amberlow", "Brindlecap", "Corvane", "Duskpod", "Ellowen"];

/**
 * A nursery's batches in order of grafting, with batch noise: every batch has a fate of its own,
 * and a few are bad ones.
 *
 * Every figure is our choice of what is plausible; none is read from the mathematics that is checked.
 */
export function inventedTakes(kind: InventedTakes, seed: number): readonly InventedBatch[] {
  const chance = chanceOf(seed, 71);
  const usual = chance.between(0.68, 0.86);
  const noise = chance.between(0.2, 0.5);
  const badBatches = chance.between(0.02, 0.08);
  const usualGrafts = Math.exp(chance.between(Math.log(40), Math.log(180)));
  const season = { phase: chance.share(), height: chance.between(0, kind.season) };
  const varieties = VARIETIES.map((name) => ({ name, take: 0.5 * chance.normal() }));
  const hardest = varieties.reduce((worst, one) => (one.take < worst.take ? one : worst));
  const batches = Array.from({ length: kind.grafters * kind.batchesEach }, (_, index) => {
    const grafter = index % kind.grafters;
    const since = chance.whole(0, kind.days - 1);
    const mostlyHard = kind.varietiesShared === "uneven" && grafter === 0;
    const variety = mostlyHard && chance.happens(0.8) ? hardest : chance.pick(varieties);
    const wave = season.height * Math.cos(2 * Math.PI * (since / 365.25 - season.phase));
    const odds = Math.log(usual / (1 - usual)) + variety.take + wave + noise * chance.normal();
    const fair = 1 / (1 + Math.exp(-odds));
    const share = chance.happens(badBatches) ? fair * chance.between(0.2, 0.8) : fair;
    const fallen = kind.fall !== null && since >= kind.fall.afterDays ? kind.fall.share : 0;
    const grafted = graftsOf(chance, usualGrafts);
    const own = Math.max(0.01, share - fallen + (grafter === 0 ? kind.firstDiffers : 0));
    return {
      grafter: `Grafter ${String.fromCharCode(65 + grafter)}`,
      variety: variety.name,
      graftedOn: FIRST_DAY + since,
      grafted,
      taken: chance.binomial(grafted, own),
    };
  });
  return batches.sort((a, b) => a.graftedOn - b.graftedOn);
}

function graftsOf(chance: Chance, usual: number): number {
  return Math.max(10, Math.round(chance.length("lognormal", usual, 0.4)));
}
