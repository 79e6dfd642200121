/** When two spellings are one name. */

export { foldName } from "./fold-name";
export { nearAlike } from "./near-alike";
export { nearestNames } from "./nearest-names";
export { commonestSpellings } from "./spellings";
