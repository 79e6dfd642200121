/** When two spellings are one name. */

export { foldName } from "./fold-name";
export { nearAlike } from "./near-alike";
export { nearestNames, slipsBetween } from "./nearest-names";
export { commonestSpellings } from "./spellings";
