import type { Cell } from "../../core";
import type { CivilDay } from "../../core/dates/civil-day";
import type { BatchCourse } from "./batch-course";
import { type Chance, chanceOf } from "./chance";
import type { RecordHabits } from "./record-habits";
import { STEP, STEPS } from "./simulated-steps";

/** One writing of one cell. A cell may be written over later: the latest writing shows. */
export interface Entry {
  readonly column: string;
  readonly value: Cell;
  /** Civil day on which it is typed in; before that day the cell does not hold it. */
  readonly typedOn: number;
}

/** Grafting is the nursery's main day: its record is missing less often than others. */
const MISSING_GRAFTING = 1 / 3;
/** Of missing records with a count, those of which only the day or only the count is missing. */
const HALF_MISSING = 0.3;
const MISSING_SEEDS = 0.02;

/** Everything that is ever written about a batch, and when. */
export function recording(
  course: BatchCourse,
  habits: RecordHabits,
  nurserySeed: number,
): readonly Entry[] {
  const chance = chanceOf(nurserySeed, 4, course.number);
  const fate = chance.share();
  const silent = fate < habits.silent;
  const forgotten = !silent && fate < habits.silent + habits.forgotten;
  const isLost = course.lostAt !== null;
  // Of half the batches that end without a word, the records break off earlier.
  const breaksOff = chance.happens(0.5) ? chance.whole(STEP.sowing, STEP.unionClosed) : STEP.ready;
  const endsEarly = silent || forgotten || isLost;
  const upTo = isLost || !endsEarly ? STEP.ready : Math.min(breaksOff, STEP.unionClosed);
  const entries: Entry[] = [];
  let rowTypedOn = 0;
  let lastTypedOn = 0;
  const write = (column: string, value: Cell, day: number) => {
    const typedOn = Math.max(rowTypedOn, day);
    lastTypedOn = Math.max(lastTypedOn, typedOn);
    entries.push({ column, value, typedOn });
  };
  STEPS.forEach((step, index) => {
    const day = course.days[index] ?? null;
    if (day === null || index > upTo || !habits.kept[index]) return;
    if (habits.hushesLosses && index === course.lostAt) return;
    const typedOn = day + delay(chance, habits);
    const { dayShown, countShown } = whatIsWritten(chance, habits, index);
    if (index === STEP.sowing) {
      rowTypedOn = typedOn;
      for (const [column, value] of rowFacts(course, habits)) write(column, value, typedOn);
    }
    if (dayShown) write(step.dayColumn, { day: day as CivilDay }, typedOn);
    const count = course.plants[index] ?? null;
    if (step.countColumn !== null && count !== null && countShown) {
      write(step.countColumn, count, typedOn);
      if (habits.writesCulled && index > STEP.sowing)
        write("Culled", culled(course, count), typedOn);
    }
    if (index === STEP.grafting && dayShown) {
      write("Grafter", course.grafter, typedOn);
      write("Scion source", chance.pick(["Garden 1", "Garden 2"]), typedOn);
    }
  });
  const closesIt = silent || (!forgotten && chance.happens(habits.closes));
  if (closesIt) {
    // A lost row is closed once its loss is seen, a finished one once its plants have left.
    const closedOn = course.settledOn + (isLost ? chance.whole(0, 30) : chance.whole(5, 60));
    const typedOn = Math.max(lastTypedOn, closedOn + delay(chance, habits));
    write("Closed", { day: closedOn as CivilDay }, typedOn);
    if (!isLost && !silent) write("Dispatched", course.readyPlants, typedOn);
  }
  return entries;
}

function delay(chance: Chance, { usualDelay, late }: RecordHabits): number {
  const lying = chance.happens(late) ? chance.whole(3, 21) : 0;
  return chance.delay(usualDelay) + lying;
}

function whatIsWritten(
  chance: Chance,
  { missing, countsMissing }: RecordHabits,
  index: number,
): { readonly dayShown: boolean; readonly countShown: boolean } {
  // Asked only where it can be, so that the other nurseries' draws stay as they are.
  if (countsMissing > 0 && index !== STEP.ready && chance.happens(countsMissing)) {
    return { dayShown: true, countShown: false };
  }
  const isMissing = chance.happens(missing * (index === STEP.grafting ? MISSING_GRAFTING : 1));
  const half = chance.happens(HALF_MISSING);
  const dayOnly = chance.happens(0.5);
  if (index === STEP.ready) return { dayShown: true, countShown: true };
  if (index === STEP.sowing) return { dayShown: true, countShown: chance.share() > MISSING_SEEDS };
  if (!isMissing) return { dayShown: true, countShown: true };
  return { dayShown: half && dayOnly, countShown: half && !dayOnly };
}

function rowFacts(
  { number, variety }: BatchCourse,
  { writesMethod }: RecordHabits,
): readonly (readonly [string, string])[] {
  const facts: (readonly [string, string])[] = [
    ["Batch", batchName(number)],
    ["Variety", variety],
    ["Rootstock", "Stock A"],
    ["Place", `Bay ${(number % 6) + 1}`],
  ];
  if (writesMethod) facts.push(["Method", "Cocoa cleft graft"]);
  return facts;
}

export function batchName(number: number): string {
  return `N-${String(number).padStart(4, "0")}`;
}

/** Some of the plants that are gone were thrown out and noted; never more than are gone. */
function culled({ plants }: BatchCourse, left: number): number {
  return Math.floor(((plants[STEP.sowing] as number) - left) / 2);
}
