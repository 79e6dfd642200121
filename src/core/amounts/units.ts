import { lazily } from "../lazily";
import { everyWord, type LanguageWords, normalText, type UnitName } from "../words";

/** What an amount is measured in: units of one kind can be turned into each other. */
export interface Measure {
  /** "length", "volume", "mass", "time", "pieces", or a unit of its own by its name. */
  readonly kind: string;
  /** How many of the kind's smallest unit make one. */
  readonly size: number;
}

export const PIECE: Measure = { kind: "pieces", size: 1 };
export const HOUR: Measure = { kind: "time", size: 60 };

/**
 * The sizes of the units, each with its symbol, which is alike in every language, if it has one.
 *
 * Source: NIST Special Publication 811 (2008), appendix B.8: inch, foot, gallon (U.S., and Canadian and
 *   U.K. (Imperial)) and pound (avoirdupois) (from memory).
 */
const UNITS: readonly (readonly [
  symbol: string | null,
  name: UnitName | "dozen" | null,
  Measure,
])[] = [
  ["mm", null, { kind: "length", size: 1 }],
  ["cm", "centimetre", { kind: "length", size: 10 }],
  ["m", "metre", { kind: "length", size: 1000 }],
  ["ml", null, { kind: "volume", size: 1 }],
  ["in", "inch", { kind: "length", size: 25.4 }],
  ["ft", "foot", { kind: "length", size: 304.8 }],
  ["l", "litre", { kind: "volume", size: 1000 }],
  // The one of the United States, by which pots are called everywhere; the other has to be named.
  ["gal", "gallon", { kind: "volume", size: 3785.411784 }],
  ["imp gal", null, { kind: "volume", size: 4546.09 }],
  ["m3", null, { kind: "volume", size: 1_000_000 }],
  ["cbm", null, { kind: "volume", size: 1_000_000 }],
  ["g", "gram", { kind: "mass", size: 1 }],
  ["kg", "kilogram", { kind: "mass", size: 1000 }],
  ["lb", "pound", { kind: "mass", size: 453.59237 }],
  ["lbs", null, { kind: "mass", size: 453.59237 }],
  ["t", "tonne", { kind: "mass", size: 1_000_000 }],
  ["min", "minute", { kind: "time", size: 1 }],
  ["h", "hour", HOUR],
  [null, "piece", PIECE],
  [null, "dozen", { kind: "pieces", size: 12 }],
  [null, "hundred", { kind: "pieces", size: 100 }],
  [null, "thousand", { kind: "pieces", size: 1000 }],
];

const measures = lazily<ReadonlyMap<string, Measure>>(
  () =>
    new Map(
      UNITS.flatMap(([symbol, name, measure]) =>
        [...(symbol === null ? [] : [symbol]), ...everyWord((words) => namesOf(words, name))].map(
          (word) => [word, measure] as const,
        ),
      ),
    ),
);

function namesOf({ units, dozen }: LanguageWords, name: UnitName | "dozen" | null) {
  if (name === null) return [];
  return name === "dozen" ? dozen : units[name];
}

/** Whether the name is that of a usual measure. */
export function isUsualMeasure(unit: string): boolean {
  return measures().has(normalText(unit));
}

/** The measure that a unit's name says; pieces where it is empty. */
export function measureOf(unit: string): Measure {
  const word = normalText(unit);
  if (word === "") return PIECE;
  return measures().get(word) ?? { kind: word, size: 1 };
}
