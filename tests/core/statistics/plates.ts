import type { KeptCount } from "../../../src/core/statistics/share-counts";
import { fixture } from "../../support/fixtures";

interface Plate {
  readonly dilution?: string;
  readonly seed?: string;
  readonly extract?: string;
  readonly seeds: number;
  readonly germinated: number;
}

interface FittedGroup extends Omit<Plate, "seeds" | "germinated"> {
  readonly betaBinomial: {
    readonly mean: number;
    readonly rho: number;
    readonly logLikelihood: number;
  };
}

/** A group of plates that R has fitted; log-likelihoods hold the binomial coefficients. */
interface PlateGroup {
  readonly name: string;
  readonly plates: readonly KeptCount[];
  readonly fit: FittedGroup["betaBinomial"];
}

/** The groups of Crowder (1978), Tables 1 and 3 (tests/fixtures/crowder-1978-*). */
export const PLATE_GROUPS: readonly PlateGroup[] = ["1", "3"].flatMap((table) => {
  const { data, expected } = fixture<
    { readonly plates: readonly Plate[] },
    { readonly groups: readonly FittedGroup[] }
  >(`crowder-1978-table-${table}`);
  return expected.groups.map(({ dilution, seed, extract, betaBinomial }) => ({
    name: `Table ${table}, ${dilution ?? `${seed} ${extract}`}`,
    plates: data.plates
      .filter(
        (plate) => plate.dilution === dilution && plate.seed === seed && plate.extract === extract,
      )
      .map(({ seeds, germinated }) => ({ kept: germinated, of: seeds })),
    fit: betaBinomial,
  }));
});

const LOG_FACTORIALS = [0];

/** Logarithm of how many ways there are to choose so many of so many, by adding up logarithms. */
export function logChoose(of: number, kept: number): number {
  for (let n = LOG_FACTORIALS.length; n <= of; n += 1) {
    LOG_FACTORIALS.push((LOG_FACTORIALS[n - 1] as number) + Math.log(n));
  }
  const at = (n: number) => LOG_FACTORIALS[n] as number;
  return at(of) - at(kept) - at(of - kept);
}

/** The beta-binomial log-likelihood without the coefficients, term by term, and the size of its sums. */
export function plainLogLikelihood(plates: readonly KeptCount[], mean: number, rho: number) {
  const total = 1 / rho - 1;
  let [sum, size] = [0, 0];
  const add = (start: number, terms: number, sign: 1 | -1) => {
    for (let k = 0; k < terms; k += 1) {
      sum += sign * Math.log(start + k);
      size += Math.abs(Math.log(start + k));
    }
  };
  for (const { kept, of } of plates) {
    add(mean * total, kept, 1);
    add((1 - mean) * total, of - kept, 1);
    add(total, of, -1);
  }
  return { sum, size };
}
