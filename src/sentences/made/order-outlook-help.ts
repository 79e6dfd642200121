// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string => "One row per open order, earliest first. The earliest gets its plants first. Late plants fill an order if no other needs them in time. Short by and Full by are as sure as you asked. They and Likely set aside are about plants still to be delivered.";

export const assurance = (): string => "Chance with which orders are to be met, as a share.";

export const orders = (): string => "Your table of orders with its header: Order, Variety (\"A or B\" where either will do), Wanted, By, Delivered, Closed.";

export const sentence = (): string => "What becomes of your orders: plants set aside, the chance to fill each by its day, and what to do.";
