import { expect, it } from "vitest";
import { openNursery, SMALL_HEADER, smallRow, tab } from "./nursery";

const BATCHES = 10_000;
/** From a click to the due list. */
const LONGEST_MS = 1500;
/** Per person-hour in the tab of the timetable. */
const RATE_COLUMN = 9;

/** Invented batches of all ages up to 400 days, each done up to its age. */
function manyBatches(batches = BATCHES) {
  const day = (age: number) =>
    new Date(Date.UTC(2026, 10, 25) - age * 86_400_000).toISOString().slice(0, 10);
  const rows = Array.from({ length: batches }, (_, index) => {
    const age = index % 400;
    const since = (days: number) => (age >= days ? day(age - days) : null);
    return smallRow({
      Batch: `N-${index}`,
      Variety: `Variety ${index % 7}`,
      Place: `Bay ${index % 12}`,
      Sown: day(age),
      "Seeds sown": 100,
      "Germination day": since(10),
      Germinated: age >= 10 ? 88 : null,
      "Grafted on": since(95),
      "Grafts made": age >= 95 ? 80 : null,
      "Take count day": since(127),
      Takes: age >= 127 ? 50 + (index % 25) : null,
      "Ready on": since(210),
      "Ready plants": age >= 210 ? 45 + (index % 5) : null,
    });
  });
  return tab("Records", [SMALL_HEADER, ...rows]);
}

it("answers the due list of 10,000 batches in 1.5 seconds", () => {
  const nursery = openNursery([manyBatches()]).ready();
  const times = threeTimes(() => {
    const { tasks } = nursery.ask("sidebarToday", { daysAhead: 7 });
    expect(tasks.length).toBeGreaterThan(100);
  });
  console.log(`due list of ${BATCHES} batches: ${times.join(", ")} ms`);
  // The best of three: another program may have taken the processor's time.
  expect(Math.min(...times)).toBeLessThan(LONGEST_MS);
}, 120_000);

it("plans the fortnight of 1,000 batches and 12 persons in 1.5 seconds", () => {
  const persons = Array.from({ length: 12 }, (_, at) => [`Person ${at}`, "", 8]);
  const crew = tab("Crew", [["Person", "Tasks", "Hours a day"], ...persons]);
  const nursery = openNursery([manyBatches(1000), crew]).ready();
  // Without work rates there would be no hours to plan with.
  const steps = nursery.values("Nursery timetable").length - 2;
  const rates = Array.from({ length: steps }, () => [40]);
  nursery.sheet("Nursery timetable").getRange(3, RATE_COLUMN, steps, 1).setValues(rates);
  const times = threeTimes(() => {
    const { days, parts } = nursery.ask("sidebarWork", { days: 14 });
    expect(days).toHaveLength(14);
    expect(parts.filter(({ hours }) => hours !== null).length).toBeGreaterThan(200);
  });
  console.log(`fortnight of 1000 batches: ${times.join(", ")} ms`);
  expect(Math.min(...times)).toBeLessThan(LONGEST_MS);
}, 120_000);

function threeTimes(work: () => void): readonly number[] {
  return [1, 2, 3].map(() => {
    const start = performance.now();
    work();
    return Math.round(performance.now() - start);
  });
}
