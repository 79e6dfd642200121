/** What an orders table may say of an order. */
export type OrderField =
  | "order"
  | "customer"
  | "variety"
  | "wanted"
  | "by"
  | "delivered"
  | "closed";

/** Headers by which each column of an orders table is known, in normal form. */
export const ORDER_WORDS: Readonly<Record<OrderField, readonly string[]>> = {
  order: [
    ...["order", "order no", "order number", "order id", "order name", "order ref", "order code"],
    ...["bon de commande", "no de commande"],
    ...["commande", "no commande", "pedido", "no pedido", "encomenda", "pesanan", "no pesanan"],
  ],
  customer: [
    ...["customer", "client", "buyer", "for", "customer name", "ordered by", "farmer"],
    ...["cliente", "comprador", "acheteur", "pelanggan", "pembeli"],
  ],
  variety: [
    ...["variety", "varieties", "clone", "cultivar", "var", "variety wanted"],
    ...["variete", "variedad", "variedade", "varietas", "klon", "clon"],
  ],
  wanted: [
    ...["wanted", "plants wanted", "plants", "quantity", "qty", "number", "ordered", "amount"],
    ...["plants ordered", "quantity ordered", "no plants", "no of plants", "number of plants"],
    ...["quantite", "cantidad", "quantidade", "jumlah", "voulu", "pedidas"],
    ...["qte", "qte commandee", "nb plants", "nombre de plants", "cant", "qtd", "qtde"],
  ],
  by: [
    ...["by", "wanted by", "needed by", "due", "due by", "due date", "ready by", "date wanted"],
    ...["delivery", "delivery date", "deliver by", "date needed", "deadline", "day", "date"],
    ...["pour le", "avant le", "echeance", "plazo", "prazo"],
    ...["livraison", "entrega", "fecha", "fecha de entrega", "tanggal"],
    ...["data de entrega", "date de livraison", "paling lambat"],
  ],
  delivered: [
    ...["delivered", "plants delivered", "given", "handed over", "supplied", "dispatched"],
    ...["livre", "livres", "entregado", "entregados", "entregue", "entregues", "dikirim"],
  ],
  closed: [
    ...["closed", "done", "complete", "completed", "cancelled", "canceled", "settled"],
    ...["clos", "cloture", "cloturee", "terminee", "cerrado", "encerrado", "selesai"],
  ],
};

/** The headers that stand in our own sentences. */
export const ORDER_COLUMN: Readonly<Record<OrderField, string>> = {
  order: "Order",
  customer: "Customer",
  variety: "Variety",
  wanted: "Wanted",
  by: "By",
  delivered: "Delivered",
  closed: "Closed",
};

/** All of them, as a tab of orders has them. */
export const ORDER_HEADER: readonly string[] = Object.values(ORDER_COLUMN);
