import { normalText } from "../words/normal-text";

/** What an amount is measured in: units of one kind can be turned into each other. */
export interface Measure {
  /** "length", "volume", "mass", "time", "pieces", or a unit of its own by its name. */
  readonly kind: string;
  /** How many of the kind's smallest unit make one. */
  readonly size: number;
}

export const PIECE: Measure = { kind: "pieces", size: 1 };
export const HOUR: Measure = { kind: "time", size: 60 };

const KINDS: readonly (readonly [kind: string, size: number, words: string])[] = [
  ["length", 1, "mm"],
  ["length", 10, "cm centimetre centimetres centimeter centimeters"],
  ["length", 1000, "m metre metres meter meters metro metros"],
  ["volume", 1, "ml"],
  ["volume", 1000, "l litre litres liter liters litro litros"],
  ["volume", 1_000_000, "m3 cbm"],
  ["mass", 1, "g gram grams gramme grammes gramo gramos grama gramas"],
  ["mass", 1000, "kg kilo kilos kilogram kilograms"],
  ["mass", 1_000_000, "t tonne tonnes"],
  ["time", 1, "min minute minutes minuto minutos menit"],
  ["time", 60, "h hr hrs hour hours heure heures hora horas jam"],
  ["pieces", 1, "piece pieces pc pcs each unit units pieza piezas peca pecas biji buah"],
  ["pieces", 1, "unite unites unidad unidades unidade"],
  ["pieces", 12, "doz dozen dozens douzaine docena duzia lusin"],
  ["pieces", 100, "hundred"],
  ["pieces", 1000, "thousand mille mil millar milheiro ribu"],
];

const MEASURES: ReadonlyMap<string, Measure> = new Map(
  KINDS.flatMap(([kind, size, words]) =>
    words.split(" ").map((word): [string, Measure] => [word, { kind, size }]),
  ),
);

/** Whether the name is that of a usual measure. */
export function isUsualMeasure(unit: string): boolean {
  return MEASURES.has(normalText(unit));
}

/** The measure that a unit's name says; pieces where it is empty. */
export function measureOf(unit: string): Measure {
  const word = normalText(unit);
  if (word === "") return PIECE;
  return MEASURES.get(word) ?? { kind: word, size: 1 };
}
