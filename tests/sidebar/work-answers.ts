import type { PlannedPart, WorkAnswer } from "../../src/workbook/sidebar-calls";

export const FIRST_RELEASE_CAUTION =
  "Blades: slit the wrap on the side away from the union and away from the hand.";

const part: PlannedPart = {
  ...{ day: "2026-11-25", task: "First release", batch: "H26-039", place: "Bay 2 north" },
  ...{ plants: 104, hours: 2.6, person: "Kesto", by: "2026-11-16", remark: "9 days late" },
  ...{ counted: false, caution: FIRST_RELEASE_CAUTION },
};
const grafting: PlannedPart = {
  ...{ ...part, task: "Grafting", batch: "H26-051", place: "Bay 1 south", plants: 200 },
  ...{ hours: 6, by: "2026-12-01", remark: "part of 420", counted: true },
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
      ...{ from: "2026-11-26", to: "2026-11-30", tasks: "Grafting, First release" },
      ...{ batches: "H26-051, H26-052", persons: "Kesto, Mirel" },
      sentence:
        "Too much for these days: 26 Nov 2026 to 30 Nov 2026: 58.5 hours are asked, 50 hours are there; 8.5 hours more in these days are the fewest that mend it",
    },
  ],
  parts: [
    part,
    { ...grafting, person: "Mirel" },
    {
      ...{ ...part, task: "Union closed", batch: "H26-028", plants: 1090, hours: null },
      ...{ person: null, by: "2026-12-10", caution: "" },
      remark: "hours not known: no work rate in the timetable",
    },
    { ...grafting, day: "2026-11-26", plants: 210 },
  ],
  unassigned: [
    {
      ...{ ...grafting, day: null, batch: "H26-052", plants: 283, hours: 8.5, person: null },
      remark: "doesn't fit; part of 400",
    },
  ],
  remark: 'crew row 4 left out: "many" is no number of hours a day',
};

/** Everything that the page may ask, answered. */
