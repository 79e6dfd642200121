import { ORDER_FIELDS, type OrderField } from "../core";
import * as columns from "../sentences/made/order-field-columns";

const COLUMNS: Readonly<Record<OrderField, () => string>> = {
  order: columns.order,
  customer: columns.customer,
  variety: columns.variety,
  wanted: columns.wanted,
  by: columns.by,
  delivered: columns.delivered,
  closed: columns.closed,
};

/** What a column of a tab of orders is called. */
export function orderColumn(field: OrderField): string {
  return COLUMNS[field]();
}

/** The header of a tab of orders. */
export function orderHeader(): readonly string[] {
  return ORDER_FIELDS.map(orderColumn);
}
