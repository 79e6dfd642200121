/**
 * Headers of the sheets that a nursery keeps, in the order in which they are
 * filled in.
 */

const RECORDS =
  "Batch, From lot, Variety, Rootstock, Method, Place, Grafter, Scion source, Sown, " +
  "Seeds sown, Germination day, Germinated, Grafted on, Grafts made, First release, " +
  "Bud break, Take count day, Takes, First flush, Flush hardening, Branching, " +
  "Union closed, Ready on, Ready plants, Culled, Dispatched, Closed, Note";
export const recordsHeader = RECORDS.split(", ");

export const ordersHeader = ["Order", "Customer", "Variety", "Wanted", "By", "Delivered", "Closed"];

export const crewHeader = ["Person", "Tasks", "Hours a day", "Off from", "Off to"];

export const closedDaysHeader = ["Day", "To"];

export const placesHeader = ["Place", "Holds"];

export const pricesHeader = ["Item", "Price", "Per"];
