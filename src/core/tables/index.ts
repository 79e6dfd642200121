/** A small table with a header: its columns, and what is wrong with a row. */

export { type HeadedTable, headedTable } from "./headed-table";
export { withOurHeaders } from "./our-headers";
export { rowMustBeReady } from "./row-must-be-ready";
export type { RowFault, RowNote, RowTrouble, SmallTable } from "./row-trouble";
