import { type Answer, type AnswerValue, columns } from "../answer";
import type { CivilDay } from "../dates/civil-day";
import { isoWeek, isoWeekText } from "../dates/iso-week";
import type { Forecaster } from "../projection/forecaster";
import { project } from "../projection/project";
import { isSilent } from "../projection/silence";
import type { Batch } from "../records/batch";
import { leftOutRemark, type Records } from "../records/records";
import type { Timetable } from "../timetable/timetable";
import { namesRemark } from "../words/names-text";
import { normalText } from "../words/normal-text";
import type { PlacesReading } from "./read-places";
import { mondayAfter, standingWeeks } from "./standing-weeks";

const COLUMNS = columns({
  Place: "text",
  Week: "text",
  Plants: "count",
  Holds: "count",
  "Over by": "count",
});

const NO_PLACE = "(no place)";
/** A year; a day typed in the wrong century must not fill the sheet. */
const MOST_WEEKS = 53;
/** Ranges are not shown here, so the level makes no difference to the answer. */
const ANY_LEVEL = 0.8;

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
 * standing-weeks.ts. Each place has its weeks up to the last in which something stands there, at
 * least the first; at most a year is shown.
 *
 * Places in the order of their table, then by name those that batches name and the table lacks,
 * then "(no place)"; of these it is not known what they hold, so Holds and Over by are blank. Over
 * by is 0 where the plants fit. Batches that can't be placed in time are left out and named: those
 * forgotten long ago, those without any count, those planned for after the weeks shown, and those of
 * a method that the timetable lacks.
 *
 * @param believing what is believed of batches to come; what the records teach, if left out
 */
export function placeLoadAnswer(question: PlaceLoadQuestion, believing?: Forecaster): Answer {
  const { records, timetable, places, asOf } = question;
  const projection = project({ records, timetable, asOf, level: ANY_LEVEL }, believing);
  const loads = new Map<string, Load>();
  for (const { name, holds } of places.places) {
    loads.set(normalText(name), { name, holds, listed: true, plants: [0] });
  }
  const forgotten: string[] = [];
  const uncounted: string[] = [];
  const noMethod: string[] = [];
  const staying: string[] = [];
  const later: string[] = [];
  let beyond = 0;
  for (const { batch, state } of projection.batches) {
    if (state === null) {
      if (!batch.closed) noMethod.push(batch.name);
      continue;
    }
    if (!state.open) continue;
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
  const rows = all.flatMap(({ name, holds, plants }) =>
    plants.map((count, week): AnswerValue[] => [
      name,
      isoWeekText(isoWeek(mondayAfter(asOf, week))),
      count,
      holds,
      holds === null ? null : Math.max(0, count - holds),
    ]),
  );
  const missing = all.filter(({ listed, name }) => !listed && name !== NO_PLACE);
  const remarks = [
    leftOutRemark(records),
    ...places.troubles,
    namesRemark(
      "not in the table of places",
      missing.map(({ name }) => name),
    ),
    loads.has("") ? "batches without a place stand under (no place)" : null,
    namesRemark("ready, or without a day to reckon from, so in one week alone", staying),
    namesRemark("not in it, nothing recorded for long", forgotten),
    namesRemark("not in it, no plants counted", uncounted),
    namesRemark("not in it, the timetable has no such method", noMethod),
    namesRemark(`not in it, planned for after the ${MOST_WEEKS} weeks shown`, later),
    beyond === 0
      ? null
      : `${beyond} ${beyond === 1 ? "batch stands" : "batches stand"} longer than the ${MOST_WEEKS} weeks shown`,
  ].filter((one) => one !== null);
  return { columns: COLUMNS, rows, remark: remarks.join("; ") || null };
}

function loadOf(loads: Map<string, Load>, { place }: Batch): Load {
  const key = normalText(place);
  let load = loads.get(key);
  if (load === undefined) {
    load = { name: key === "" ? NO_PLACE : place, holds: null, listed: false, plants: [0] };
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
  const last = (load: Load) => (load.name === NO_PLACE ? 1 : 0);
  return [
    ...listed,
    ...others.sort((a, b) => last(a) - last(b) || (a.name < b.name ? -1 : a.name > b.name ? 1 : 0)),
  ];
}
