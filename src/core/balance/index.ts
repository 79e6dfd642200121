/** Where the plants of each batch are: what was started, lost, sent out and stands. */

export { BALANCE_COLUMNS, type BalanceRemark, type Balances, balances } from "./balances";
