import { lazily } from "../lazily";
import { at } from "../mathematics";
import { SHARE_PRIOR, spreadWeights } from "./share-prior";

const MEANS = 101;
const NURSERY_MEANS = 41;

/** What may be true of the share kept at a step, as points with the weights that the prior gives them. */
export interface ShareGrid {
  /** Means of groups. */
  readonly means: Float64Array;
  /** Weights of the nursery's mean. */
  readonly nurseryWeights: Float64Array;
  readonly groupWeights: readonly number[];
  readonly batchWeights: readonly number[];
  /** [group spread][nursery mean] → weights of the group means, adding up to 1. */
  readonly groupMeans: readonly (readonly Float64Array[])[];
}

/** What is the same for every share that is learned, of which a forecast has one for each step. */
const commonGrid = lazily(() => {
  const means = grid01(MEANS);
  const nurseryMeans = grid01(NURSERY_MEANS);
  const logs = logsOf(means);
  return {
    means,
    logsOfNursery: logsOf(nurseryMeans),
    groupWeights: spreadWeights(SHARE_PRIOR.varieties),
    batchWeights: spreadWeights(SHARE_PRIOR.batches),
    groupMeans: SHARE_PRIOR.varieties.values.map((spread) =>
      Array.from(nurseryMeans, (mean) => betaWeights(logs, mean, spread)),
    ),
  };
});

/**
 * The grid about a timetable's share.
 *
 * @param timetableMean strictly between 0 and 1
 *
 * Method: points even in the arcsine of the root of a share, in which a share varies about as much
 *   everywhere; a beta's weight at each by its density.
 * Source: Bartlett, M. S. (1936). The square root transformation in analysis of variance. J. R.
 *   Statist. Soc. Suppl. 3, 68-78, and (1947). The use of transformations. Biometrics 3, 39-52 (the
 *   arcsine of the root; citations looked up). How many points is our choice.
 */
export function shareGrid(timetableMean: number): ShareGrid {
  const common = commonGrid();
  const nurseryWeights = betaWeights(common.logsOfNursery, timetableMean, SHARE_PRIOR.nursery);
  return { ...common, nurseryWeights };
}

/** Points inside 0 to 1, closer together towards the ends, where shares vary less. */
function grid01(points: number): Float64Array {
  return Float64Array.from({ length: points }, (_, i) => {
    const sine = Math.sin(((i + 0.5) / points) * (Math.PI / 2));
    return sine * sine;
  });
}

/** The logarithms of points and of what is left of 1, which hundreds of weights are made from. */
interface Logs {
  readonly kept: Float64Array;
  readonly lost: Float64Array;
}

function logsOf(points: Float64Array): Logs {
  return { kept: points.map(Math.log), lost: points.map((x) => Math.log(1 - x)) };
}

/** Weights of grid points under a beta of given mean and correlation. */
function betaWeights({ kept, lost }: Logs, mean: number, correlation: number): Float64Array {
  const total = (1 - correlation) / correlation;
  // The points are even in the arcsine; the change of variable adds half a power at each end.
  const a = mean * total - 0.5;
  const b = (1 - mean) * total - 0.5;
  const weights = new Float64Array(kept.length);
  let largest = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < weights.length; i += 1) {
    const log = a * at(kept, i) + b * at(lost, i);
    weights[i] = log;
    if (log > largest) largest = log;
  }
  let sum = 0;
  for (let i = 0; i < weights.length; i += 1) {
    const weight = Math.exp(at(weights, i) - largest);
    weights[i] = weight;
    sum += weight;
  }
  for (let i = 0; i < weights.length; i += 1) weights[i] = at(weights, i) / sum;
  return weights;
}
