// Made by npm run sentences from the files of sentences; a test holds it equal.

export const by = (): string =>
  "By";

export const closed = (): string =>
  "Closed";

export const customer = (): string =>
  "Customer";

export const delivered = (): string =>
  "Delivered";

export const order = (): string =>
  "Order";

export const variety = (): string =>
  "Variety";

export const wanted = (): string =>
  "Wanted";

export const headers = () => ({
  by: "By",
  closed: "Closed",
  customer: "Customer",
  delivered: "Delivered",
  order: "Order",
  variety: "Variety",
  wanted: "Wanted",
});
