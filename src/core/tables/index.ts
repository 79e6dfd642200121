/** A small table with a header: its columns, and what is wrong with a row. */

export { type BesideColumn, type BesideFound, besideColumns } from "./beside-columns";
export { type BesideTable, besideName } from "./beside-fields";
export { BESIDE_NAMES, BESIDE_TABLES, besideOf } from "./beside-kinds";
export { type BesideRead, besideTable } from "./beside-table";
export { columnRemarks } from "./column-remarks";
export { withoutDittos } from "./ditto-cells";
export { type HeadedTable, headedTable, tableAt } from "./headed-table";
export { withOurHeaders } from "./our-headers";
export { cellsMustBeReady, rowMustBeReady } from "./row-must-be-ready";
export type {
  ColumnInDoubt,
  ColumnsRemark,
  RowFault,
  RowNote,
  RowTrouble,
  SmallTable,
} from "./row-trouble";
