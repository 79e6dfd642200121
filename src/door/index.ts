/** The public list of the door, by hand. */
export type { CellOut } from "./answer-out";
export {
  cellMustBeReady,
  HIDDEN,
  hidesLooks,
  isMissing,
  levelArgument,
  textArgument,
  wholeNumberArgument,
} from "./arguments";
export { rowsOf } from "./cells-in";
export { type Door, openDoor } from "./door";
export type { Host } from "./host";
export { localeOrder } from "./locale-order";
export { planQuestion, wantedArgument } from "./plan-question";
