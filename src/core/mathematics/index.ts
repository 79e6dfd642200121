/** What would be the same for any trade: functions, matrices, flows. */

export { type CheapestFlow, cheapestFlow, type FlowEdge, type FlowQuestion } from "./cheapest-flow";
export { claimsOnSupplies } from "./claims-on-supplies";
export { incompleteBeta } from "./incomplete-beta";
export { largestRemainder } from "./largest-remainder";
export { logGamma } from "./log-gamma";
export {
  add,
  at,
  dot,
  entry,
  inverseOf,
  type Matrix,
  rootOf,
  rowOf,
  solvedBackward,
  solvedForward,
  squareMatrix,
  trace,
} from "./matrix";
export { normalQuantile } from "./normal-quantile";
export { totalOf } from "./total-of";
