/** Where the plants of each batch are: what was started, lost, sent out and stands. */

export { BALANCE_COLUMNS, type BalanceRemark, type Balances, balances } from "./balances";
export { type BatchBalance, batchBalance } from "./batch-balance";
export type { CountedBy, LossStage, StageLoss } from "./stage-losses";
