/** So much of an item, in units that can be turned into each other. */

export { type Amount, added, addUp, bought, inLargerUnit, needsFor, sumKey } from "./amount";
export { HOUR, isUsualMeasure, type Measure, measureOf, PIECE } from "./units";
