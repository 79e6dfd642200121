import type { Kinds, RowOf } from "../answer";
import { eachName } from "../cells";
import { type CivilDay, isoWeek, isoWeekText } from "../dates";
import { foldName } from "../names";
import { ANY_LEVEL, type Forecaster, isSilent, project } from "../projection";
import type { Batch, Records } from "../records";
import { leftOutByMethod, type Timetable } from "../timetable";
import type { NamedBatches, PlaceRemark } from "./place-remark";
import type { PlacesReading } from "./read-places";
import { mondayAfter, standingWeeks } from "./standing-weeks";

/** The columns of a place's week. */
export const LOAD_COLUMNS = {
  place: "text",
  week: "text",
  plants: "count",
  holds: "count",
  overBy: "count",
  weekFrom: "day",
} as const satisfies Kinds;

/**
 * A week, such as "2026-W48", of a place, which is empty for batches without one. What it holds, and by how
 * much that is too little, is null where the table of places does not say.
 */
export type PlaceWeek = RowOf<
  typeof LOAD_COLUMNS,
  {
    readonly place: string;
    readonly week: string;
    readonly plants: number;
    readonly weekFrom: CivilDay;
  }
>;

export interface PlaceLoads {
  readonly weeks: readonly PlaceWeek[];
  readonly remarks: readonly PlaceRemark[];
}

/** A year; a day typed in the wrong century must not fill the sheet. */
const MOST_WEEKS = 53;

export interface PlaceLoadQuestion {
  readonly records: Records;
  readonly timetable: Timetable;
  readonly places: PlacesReading;
  readonly asOf: CivilDay;
}

interface Load {
  readonly name: string;
  readonly holds: number | null;
  readonly listed: boolean;
  readonly plants: number[];
}

/**
 * How full each place is, week by week from the as-of day's: the likely plants of every open batch,
 * in the place that the records name, up to the week of their likely ready day; see
 * standing-weeks.ts. Each place has the weeks in which something stands there, at most a year; places in
 * which nothing does are named in a remark.
 *
 * Places in the order of their table, then by name those that batches name and the table lacks,
 * then those without a place; of these it is not known what they hold, so Holds and Over by are blank. Over
 * by is 0 where the plants fit. Batches that can't be placed in time are left out and named: those
 * forgotten long ago, those without any count, those planned for after the weeks shown, and those of
 * a method that the timetable lacks.
 *
 * @param believing what is believed of batches to come; what the records teach, if left out
 */
export function placeLoads(question: PlaceLoadQuestion, believing?: Forecaster): PlaceLoads {
  const { records, timetable, places, asOf } = question;
  const projection = project({ records, timetable, asOf, level: ANY_LEVEL }, believing);
  const loads = new Map<string, Load>();
  for (const { name, holds } of places.places) {
    loads.set(foldName(name), { name, holds, listed: true, plants: [0] });
  }
  const forgotten: string[] = [];
  const uncounted: string[] = [];
  const staying: string[] = [];
  const later: string[] = [];
  let beyond = 0;
  for (const { batch, state } of projection.batches) {
    if (state === null || !state.open) continue;
    if (isSilent(state)) {
      forgotten.push(batch.name);
      continue;
    }
    const standing = standingWeeks(state, projection);
    if (standing === null) {
      uncounted.push(batch.name);
      continue;
    }
    if (standing.firstWeek >= MOST_WEEKS) {
      later.push(batch.name);
      continue;
    }
    if (!standing.leaves) staying.push(batch.name);
    if (standing.firstWeek + standing.plants.length > MOST_WEEKS) beyond += 1;
    addTo(loadOf(loads, batch), standing.firstWeek, standing.plants);
  }
  const all = inOrder([...loads.values()]);
  const weeks = all.flatMap(({ name, holds, plants }) =>
    plants.flatMap((count, week): readonly PlaceWeek[] => {
      if (count === 0) return [];
      const overBy = holds === null ? null : Math.max(0, count - holds);
      const weekFrom = mondayAfter(asOf, week);
      const text = isoWeekText(isoWeek(weekFrom));
      return [{ place: name, week: text, plants: count, holds, overBy, weekFrom }];
    }),
  );
  const empty = all.filter(
    ({ name, plants }) => name !== "" && plants.every((count) => count === 0),
  );
  const missing = all.filter(({ listed, name }) => !listed && name !== "");
  const remarks: PlaceRemark[] = [...leftOutByMethod(question), ...places.troubles];
  const name = (code: NamedBatches, batches: readonly string[]) => {
    if (batches.length > 0) remarks.push({ code, batches: eachName(batches) });
  };
  if (empty.length > 0) {
    remarks.push({ code: "places-empty", places: empty.map((load) => load.name) });
  }
  if (missing.length > 0) {
    const unlisted = eachName(missing.map((load) => load.name));
    remarks.push({ code: "places-not-listed", places: unlisted });
  }
  if (loads.has("")) remarks.push({ code: "batches-without-place" });
  name("one-week-alone", staying);
  name("nothing-recorded", forgotten);
  name("not-counted", uncounted);
  if (later.length > 0) {
    remarks.push({ code: "planned-after", batches: eachName(later), weeks: MOST_WEEKS });
  }
  if (beyond > 0) remarks.push({ code: "stand-longer", batches: beyond, weeks: MOST_WEEKS });
  return { weeks, remarks };
}

function loadOf(loads: Map<string, Load>, { place }: Batch): Load {
  const key = foldName(place);
  let load = loads.get(key);
  if (load === undefined) {
    load = { name: key === "" ? "" : place, holds: null, listed: false, plants: [0] };
    loads.set(key, load);
  } else if (!load.listed && key !== "" && place < load.name) {
    // Of several spellings the first in order, so that the order of the rows does not matter.
    load = { ...load, name: place };
    loads.set(key, load);
  }
  return load;
}

function addTo({ plants }: Load, firstWeek: number, added: readonly number[]): void {
  added.forEach((count, at) => {
    const week = firstWeek + at;
    if (week >= MOST_WEEKS) return;
    while (plants.length <= week) plants.push(0);
    plants[week] = (plants[week] as number) + count;
  });
}

function inOrder(loads: readonly Load[]): Load[] {
  const listed = loads.filter((load) => load.listed);
  const others = loads.filter((load) => !load.listed);
  const last = (load: Load) => (load.name === "" ? 1 : 0);
  return [
    ...listed,
    ...others.sort((a, b) => last(a) - last(b) || (a.name < b.name ? -1 : a.name > b.name ? 1 : 0)),
  ];
}
