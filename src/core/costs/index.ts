/** What batches cost so far, by a list of prices. */

export type { CostRemark, UnpricedItem } from "./cost-remark";
export { COST_COLUMNS, type CostRow, type CostsSoFar, costsSoFar } from "./costs-so-far";
export { type PlantCost, plantCost, plantCostRemarks } from "./plant-cost";
export { NO_PRICES, type PricesReading, priceTable, readPrices } from "./read-prices";
