/** Tables that stand beside the records, as small as they can be. */
export const crewTable = (hours: number) => [
  ["Person", "Hours a day"],
  ["Ana", hours],
];
export const placesTable = (holds: number) => [
  ["Place", "Holds"],
  ["Bay 1", holds],
];
/** @param prices item, price and unit of each */
export const pricesTable = (...prices: readonly (readonly [string, number, string])[]) => [
  ["Item", "Price", "Per"],
  ...prices,
];
