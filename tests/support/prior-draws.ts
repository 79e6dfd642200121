import { SHARE_PRIOR } from "../../src/core/statistics/share-prior";
import type { Draws } from "./draws";

/** A draw from the beta whose variance is the given part of m(1 − m). */
export function drawBeta(draws: Draws, mean: number, part: number): number {
  const sum = 1 / part - 1;
  const inside = Math.min(Math.max(mean, 1e-12), 1 - 1e-12);
  return draws.beta(inside * sum, (1 - inside) * sum);
}

/** How far groups differ: an exponential number below 1, moved to the nearest value of the list. */
function drawSpread(
  draws: Draws,
  { values, meanSpread }: { readonly values: readonly number[]; readonly meanSpread: number },
): number {
  for (;;) {
    const spread = -meanSpread * Math.log(1 - draws.uniform());
    if (spread >= 1) continue;
    return values.reduce((best, one) =>
      Math.abs(one - spread) < Math.abs(best - spread) ? one : best,
    );
  }
}

/** One possible nursery: the means of its varieties, and how far batches of one variety differ. */
interface NurseryDrawn {
  readonly varieties: readonly number[];
  readonly correlation: number;
}

/** Draws a nursery of so many varieties about the timetable's share, written apart from the posterior. */
export function drawNursery(draws: Draws, kept: number, varieties: number): NurseryDrawn {
  const nursery = drawBeta(draws, kept, SHARE_PRIOR.nursery);
  const spread = drawSpread(draws, SHARE_PRIOR.varieties);
  return {
    varieties: Array.from({ length: varieties }, () => drawBeta(draws, nursery, spread)),
    correlation: drawSpread(draws, SHARE_PRIOR.batches),
  };
}
