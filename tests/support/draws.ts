import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";

/** Seeded draws from the distributions that the projection speaks of, written apart from it. */
export interface Draws {
  /** 0 to 1, 1 left out. */
  uniform(): number;
  gamma(shape: number): number;
  beta(a: number, b: number): number;
  binomial(trials: number, share: number): number;
}

export function seededDraws(seed: number): Draws {
  const generator = xoroshiro128plus(seed);
  const uniform = () => uniformFloat64(generator);
  const normal = normalDraws(uniform);
  const gamma = (shape: number) => drawGamma(shape, uniform, normal);
  const beta = (a: number, b: number) => {
    const one = gamma(a);
    return one / (one + gamma(b));
  };
  return {
    uniform,
    gamma,
    beta,
    binomial: binomialDraws(uniform),
  };
}

/** Polar method: Marsaglia, G., Bray, T. A. (1964). SIAM Review 6, 260-264 (citation from memory). */
function normalDraws(uniform: () => number): () => number {
  let spare: number | null = null;
  return () => {
    if (spare !== null) {
      const kept = spare;
      spare = null;
      return kept;
    }
    for (;;) {
      const x = 2 * uniform() - 1;
      const y = 2 * uniform() - 1;
      const square = x * x + y * y;
      if (square === 0 || square >= 1) continue;
      const scale = Math.sqrt((-2 * Math.log(square)) / square);
      spare = y * scale;
      return x * scale;
    }
  };
}

/** Marsaglia, G., Tsang, W. W. (2000). ACM Trans. Math. Software 26, 363-372 (citation from memory). */
function drawGamma(shape: number, uniform: () => number, normal: () => number): number {
  if (shape < 1) {
    return drawGamma(shape + 1, uniform, normal) * (1 - uniform()) ** (1 / shape);
  }
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = normal();
    const cubed = (1 + c * x) ** 3;
    if (cubed <= 0) continue;
    const u = 1 - uniform();
    // The squeeze of the paper spares two logarithms most of the time.
    if (u < 1 - 0.0331 * x ** 4) return d * cubed;
    if (Math.log(u) < 0.5 * x * x + d - d * cubed + d * Math.log(cubed)) return d * cubed;
  }
}

/** By inversion, from the likeliest count outwards. */
function binomialDraws(uniform: () => number): (trials: number, share: number) => number {
  // Logarithms of the factorials, by adding up.
  const logFactorial = [0];
  return (trials, share) => {
    if (share <= 0 || share >= 1) return share <= 0 ? 0 : trials;
    for (let n = logFactorial.length; n <= trials; n += 1) {
      logFactorial.push((logFactorial[n - 1] as number) + Math.log(n));
    }
    const logOf = (n: number) => logFactorial[n] as number;
    const odds = share / (1 - share);
    const mode = Math.min(trials, Math.floor((trials + 1) * share));
    const atMode = Math.exp(
      logOf(trials) -
        logOf(mode) -
        logOf(trials - mode) +
        mode * Math.log(share) +
        (trials - mode) * Math.log1p(-share),
    );
    let left = uniform() - atMode;
    let [below, above] = [mode, mode];
    let [chanceBelow, chanceAbove] = [atMode, atMode];
    while (left >= 0 && (below > 0 || above < trials)) {
      if (above < trials) {
        chanceAbove *= ((trials - above) / (above + 1)) * odds;
        above += 1;
        left -= chanceAbove;
        if (left < 0) return above;
      }
      if (below > 0) {
        chanceBelow *= below / ((trials - below + 1) * odds);
        below -= 1;
        left -= chanceBelow;
        if (left < 0) return below;
      }
    }
    return mode;
  };
}
