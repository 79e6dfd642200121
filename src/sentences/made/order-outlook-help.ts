// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string =>
  "One row an open order, the earliest day first. Plants are set aside for the earliest day first; late ones fill an order where no other needs them in time. Short by and Full by hold with the assurance. Likely set aside, Short by and Full by are about plants still to be delivered.";

export const assurance = (): string =>
  "Chance with which orders are to be met, as a share.";

export const orders = (): string =>
  "Your table of orders with its header: Order, Variety (\"A or B\" where either will do), Wanted, By, Delivered, Closed.";

export const sentence = (): string =>
  "What becomes of your orders: plants set aside, the chance to fill each by its day, and what to do.";
