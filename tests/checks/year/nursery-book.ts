import { type Cell, gridOf } from "../../../src/core/cells/cell";
import { type CivilDay, daysLater } from "../../../src/core/dates";
import { type DueTasks, dueTasks } from "../../../src/core/due/due-tasks";
import { stateFinder } from "../../../src/core/projection";
import { readRecords } from "../../../src/core/records/read-records";
import { methodFinder, recordedSteps, type Timetable } from "../../../src/core/timetable";
import { builtInTimetable } from "../../../src/core/timetable/read-timetable";
import { timetableOf } from "../../core/timetable/typed-timetable";
import { day } from "../../support/days";
import { type TrueBatch, trulySold } from "./invented-year";

/** The invented nursery's own timetable: the days are made up, as the nursery is. */
const OWN = timetableOf(`
  Method | Step            | After    | From day | Usual day | By day | Counted | Kept of 100 | Every days | Until
  Cocoa  | Sowing          |          |          |           |        | yes     |             |            |
  Cocoa  | Germination     | Sowing   | 8        | 10        | 14     | yes     | 85          |            |
  Cocoa  | Defoliate scions | Grafting | -10     | -9        | -8     |         |             |            |
  Cocoa  | Grafting        | Sowing   | 86       | 90        | 100    | yes     | 80          |            |
  Cocoa  | First release   | Grafting | 13       | 14        | 18     |         |             |            |
  Cocoa  | Bud break       | Grafting | 10       | 14        | 21     |         |             |            |
  Cocoa  | Take count      | Grafting | 28       | 30        | 35     | yes     | 75          |            |
  Cocoa  | Second release  | Grafting | 40       | 42        | 60     |         |             |            |
  Cocoa  | Branching       | Grafting | 58       | 60        | 66     |         |             |            |
  Cocoa  | Ready           | Grafting | 110      | 112       | 122    | yes     | 90          |            |
  Cocoa  | Weed the bags   | Sowing   |          |           |        |         |             | 14         | Ready
  Cocoa  | Shoots below the union | Grafting | 14 |          | 90     |         |             | 7          |
  Mango  | Sowing          |          |          |           |        | yes     |             |            |
  Mango  | Germination     | Sowing   | 13       | 15        | 20     | yes     | 85          |            |
  Mango  | Defoliate scions | Grafting | -10     | -9        | -8     |         |             |            |
  Mango  | Grafting        | Sowing   | 236      | 240       | 250    | yes     | 80          |            |
  Mango  | Bud break       | Grafting | 9        | 12        | 18     |         |             |            |
  Mango  | First release   | Grafting | 28       | 30        | 40     |         |             |            |
  Mango  | Take count      | Grafting | 58       | 60        | 66     | yes     | 75          |            |
  Mango  | Second release  | Grafting | 73       | 75        | 95     |         |             |            |
  Mango  | Ready           | Grafting | 178      | 180       | 190    | yes     | 90          |            |
  Mango  | Weed the bags   | Sowing   |          |           |        |         |             | 14         | Ready
  Mango  | Shoots below the union | Grafting | 14 |          | 90     |         |             | 7          |`);
if (OWN.faults.length > 0) throw new Error(JSON.stringify(OWN.faults));

/** A timetable that the year is played by, and what the book writes under Method. */
export interface PlayedBy {
  readonly timetable: Timetable;
  readonly methodOf: (crop: TrueBatch["crop"]) => string;
}
export const BY_OWN: PlayedBy = { timetable: OWN.timetable, methodOf: (crop) => crop };
export const BY_BUILT_IN: PlayedBy = {
  timetable: builtInTimetable(),
  methodOf: (crop) => `${crop} cleft graft`,
};

const FIRST_DAY = day("2026-01-01");
export const dayOf = (at: number): CivilDay => daysLater(FIRST_DAY, at);

const HEADER = [
  ...["Batch", "Method", "Place", "Sown on", "Seeds sown", "Germination day", "Germinated"],
  ...["Defoliate scions", "Grafted on", "Grafts made", "First release", "Take count day", "Takes"],
  ...["Second release", "Ready on", "Ready plants", "Dispatched"],
];

/** The manager's table at the dawn of a day: all that was done before is written, and nothing else. */
function bookAt(
  batches: readonly TrueBatch[],
  today: number,
  methodOf: PlayedBy["methodOf"],
): readonly (readonly Cell[])[] {
  const on = (at: number): Cell => (at < today ? { day: dayOf(at) } : "");
  const counted = ({ day, count }: TrueBatch["sown"]): Cell[] =>
    day < today ? [{ day: dayOf(day) }, count] : ["", ""];
  const rows = batches
    .filter(({ sown }) => sown.day < today)
    .map((batch): readonly Cell[] => {
      const { name, crop, place, releasedAgain, grafted } = batch;
      const isDead = batch.germinated.day < today && batch.germinated.count === 0;
      const known = [
        name,
        methodOf(crop),
        place,
        ...counted(batch.sown),
        ...counted(batch.germinated),
      ];
      if (isDead) return [...known, ...HEADER.slice(known.length).map(() => "")];
      const again =
        releasedAgain === null ? (grafted.day < today ? "not needed" : "") : on(releasedAgain);
      const sold = trulySold(batch, today - 1);
      return [
        ...[...known, on(batch.defoliated), ...counted(grafted), on(batch.released)],
        ...[...counted(batch.taken), again, ...counted(batch.ready), sold === 0 ? "" : sold],
      ];
    });
  return [HEADER, ...rows];
}

export interface Morning {
  readonly due: DueTasks;
  /** Plants that stand by the add-in's own count; null where none is known. */
  readonly standing: ReadonlyMap<string, number | null>;
}

/** What the add-in says at the dawn of a day. */
export function morningOf(
  batches: readonly TrueBatch[],
  today: number,
  { timetable, methodOf: writtenFor }: PlayedBy,
): Morning {
  const asOf = dayOf(today);
  const records = readRecords(gridOf(bookAt(batches, today, writtenFor)), {
    stepNames: timetable.methods.flatMap((method) => recordedSteps(method).map(({ name }) => name)),
    ...{ asOf, localeOrder: null, decimalMark: null, told: new Map() },
  });
  const stateOf = stateFinder(records, asOf);
  const methodOf = methodFinder(timetable);
  const standing = new Map(
    records.batches.map((batch) => {
      const method = methodOf(batch);
      return [batch.name, method === null ? null : stateOf(batch, method).plants] as const;
    }),
  );
  return { due: dueTasks({ records, timetable, asOf, daysAhead: 0 }), standing };
}
