import type { PlannedPart, WorkAnswer } from "../../src/wire/work";
import { day } from "../support/days";

export const FIRST_RELEASE_CAUTION =
  "Blades: slit the wrap on the side away from the union and away from the hand.";

const part: PlannedPart = {
  ...{ day: "2026-11-25", task: "First release", batch: "H26-039", place: "Bay 2 north" },
  ...{ plants: 104, hours: 2.6, person: "Kesto", by: "2026-11-16" },
  remarks: [{ code: "days-late", days: 9 }],
  ...{ counted: false, caution: FIRST_RELEASE_CAUTION },
};
const grafting: PlannedPart = {
  ...{ ...part, task: "Grafting", batch: "H26-051", place: "Bay 1 south", plants: 200 },
  ...{ hours: 6, by: "2026-12-01", counted: true },
  remarks: [{ code: "part-of", plants: 420 }],
  caution: "Blades cut: cut away from the hand.",
};

/** Fourteen days from a Wednesday: two Sundays closed, Kesto off on the 30th. */
const plannedDays: WorkAnswer["days"] = Array.from({ length: 14 }, (_, at) => {
  const day = new Date(Date.UTC(2026, 10, 25 + at)).toISOString().slice(0, 10);
  const isClosed = at === 4 || at === 11;
  const hands = isClosed ? [0, 0] : [at === 5 ? 0 : 6, 8];
  const asked = [8.6, 14, 14, 14, 0, 8, 3.25][at] ?? 0;
  const there = hands.reduce((sum, one) => sum + one, 0);
  return { day, isClosed, asked, there, hands, isOverloaded: at >= 1 && at <= 5 };
});

export const work: WorkAnswer = {
  asOf: "2026-11-25",
  crewTab: "Crew",
  closedTab: "Closed days",
  crewHeader: ["Person", "Tasks", "Hours a day", "Off from", "Off to"],
  persons: ["Kesto", "Mirel"],
  days: plannedDays,
  overloads: [
    {
      ...{ from: day("2026-11-26"), to: day("2026-11-30"), tasks: ["Grafting", "First release"] },
      ...{ batches: ["H26-051", "H26-052"], persons: ["Kesto", "Mirel"] },
      ...{ asked: 58.5, there: 50, short: 8.5, lacksWho: false, days: [] },
    },
  ],
  parts: [
    part,
    { ...grafting, person: "Mirel" },
    {
      ...{ ...part, task: "Union closed", batch: "H26-028", plants: 1090, hours: null },
      ...{ person: null, by: "2026-12-10", caution: "" },
      remarks: [{ code: "no-work-rate" }],
    },
    { ...grafting, day: "2026-11-26", plants: 210 },
  ],
  unassigned: [
    {
      ...{ ...grafting, day: null, batch: "H26-052", plants: 283, hours: 8.5, person: null },
      remarks: [{ code: "does-not-fit" }, { code: "part-of", plants: 400 }],
    },
  ],
  remark: "row 4 of crew is left out",
};

/** Everything that the page may ask, answered. */
