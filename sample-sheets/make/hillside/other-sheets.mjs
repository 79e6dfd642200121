/**
 * Orders, crew, closed days, places and prices of the invented nursery, and the plants per
 * person-hour that it counted for itself.
 */
import { dayFromIso } from "../days.mjs";
import {
  closedDaysHeader,
  crewHeader,
  ordersHeader,
  placesHeader,
  pricesHeader,
} from "../sheet-headers.mjs";

const day = (/** @type {string} */ iso) => ({ day: dayFromIso(iso) });

export const ordersRows = [
  ordersHeader,
  ["O-01", "Order desk A", "Amberlow", 400, day("2026-09-30"), 400, day("2026-09-24")],
  ["O-02", "Order desk B", "Duskpod", 150, day("2026-10-31"), 150, day("2026-10-30")],
  ["O-03", "Growers' table C", "Brindlecap", 180, day("2026-11-20"), 60, null],
  ["O-04", "Order desk A", "Corvane", 120, day("2026-12-15"), null, null],
  ["O-05", "Order desk D", "Amberlow", 300, day("2027-01-15"), null, null],
  ["O-06", "Growers' table C", "Ellowen", 90, day("2027-02-10"), null, null],
  ["O-07", "Order desk B", "Duskpod", 260, day("2027-02-28"), null, null],
  ["O-08", "Order desk D", "Corvane", 350, day("2027-05-31"), null, null],
];

export const crewRows = [
  crewHeader,
  ["Orrin", "Grafting; First release; Union closed", 6, null, null],
  ["Tavi", "Grafting; First release; Take count", 6, day("2026-12-01"), day("2026-12-04")],
  ["Mirel", "Grafting; Take count", 5, null, null],
  ["Kesto", "Grafting; Sowing", 6, day("2026-11-30"), day("2026-11-30")],
  ["Hand 1", "Sowing; Germination; First release; Ready", 7, null, null],
  [
    "Hand 2",
    "Sowing; Bud break; Take count; First flush; Flush hardening; Branching; Union closed; Ready",
    7,
    day("2026-12-07"),
    day("2026-12-11"),
  ],
];

export const closedDaysRows = [
  closedDaysHeader,
  ["Sunday", null],
  [day("2026-12-24"), day("2026-12-26")],
];

export const placesRows = [
  placesHeader,
  ["Bay 1 north", 1800],
  ["Bay 1 south", 1400],
  ["Bay 2 north", 1900],
  ["Bay 2 south", 900],
];

/** Invented, in no money of any country. */
export const pricesRows = [
  pricesHeader,
  ["Pod", 0.4, null],
  ["Bag", 6, "100"],
  ["Potting mix", 2.5, "50 l"],
  ["Scion", 0.05, "piece"],
  ["Wrap strip", 0.12, "m"],
  ["Hour", 3, "hour"],
];

export const perPersonHour = {
  Sowing: 90,
  Germination: 400,
  Grafting: 22,
  "First release": 80,
  "Bud break": 350,
  "Take count": 240,
  "First flush": 350,
  "Flush hardening": 300,
  Branching: 220,
  "Union closed": 70,
  Ready: 110,
};
