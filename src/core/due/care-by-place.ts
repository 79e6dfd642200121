import type { CivilDay } from "../dates";
import { madeOnce } from "../made-once";
import type { BatchState } from "../projection";
import type { CareToday } from "../records";
import type { Round } from "../timetable";
import type { RecordedAt } from "./work-ahead";

/** A Monday (5 January 1970), from which care is counted that nobody writes down: every seven days is every Monday. */
const FIRST_MONDAY = 4;

interface Care {
  readonly name: string;
  readonly caution: string;
  readonly every: number;
  readonly states: BatchState[];
}

/**
 * The repeated care that falls on the as-of day, a remark for the places that have the same; a caution is said
 * with the first that needs it. Where the nursery writes the care down, its days are counted from the last time
 * in any batch that stands there; else from a Monday, and it is over with its day: nobody is late with what is
 * never written.
 */
export function careByPlace(
  states: readonly BatchState[],
  asOf: CivilDay,
  recordedAt: RecordedAt,
): readonly CareToday[] {
  const places = new Map<string, Map<string, Care>>();
  for (const state of states) {
    for (const round of state.method.rounds) {
      if (state.batch.notDone.includes(round.key) || !isOnNow(state, round)) continue;
      const cares = madeOnce(places, state.batch.place, () => new Map<string, Care>());
      const { name, caution, every } = round;
      madeOnce(cares, `${round.key} ${every}`, () => ({
        name,
        caution,
        every,
        states: [],
      })).states.push(state);
    }
  }
  const lines = new Map<string, { places: string[]; cares: Care[] }>();
  for (const [place, cares] of [...places].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const today = [...cares]
      .filter(([key, care]) => isToday(care, asOf, recordedAt(key.slice(0, key.lastIndexOf(" ")))))
      .map(([, care]) => care);
    if (today.length === 0) continue;
    // Places with the same work on a day are one line; batches without a place are another.
    const key = JSON.stringify([place === "", ...today.map(({ name }) => name)]);
    const line = madeOnce(lines, key, () => ({ places: [], cares: [] }));
    line.places.push(place);
    line.cares.push(...today);
  }
  const said = new Set<string>();
  return [...lines.values()].map(({ places: at, cares }): CareToday => {
    const each = (text: (care: Care) => string) => [...new Set(cares.map(text))].filter(Boolean);
    const cautions = each(({ caution }) => caution).filter((one) => !said.has(one));
    for (const one of cautions) said.add(one);
    const batches = new Set(cares.flatMap(({ states: of }) => of.map(({ batch }) => batch)));
    return {
      code: "care-today",
      places: at,
      tasks: each(({ name }) => name),
      cautions,
      batches: batches.size,
    };
  });
}

/** Whether a batch stands between the step, or the days, with which the care begins and ends. */
function isOnNow({ asOf, doneOn, reached }: BatchState, round: Round): boolean {
  const start = round.after === null ? null : (doneOn[round.after] ?? null);
  if (start === null || (round.until !== null && reached >= round.until)) return false;
  return asOf >= start + round.from && asOf <= start + round.by;
}

/** @param at where its days stand in the records; null where nobody writes it down */
function isToday({ every, states }: Care, asOf: CivilDay, at: number | null): boolean {
  const last = states.reduce((latest, { batch }) => {
    const day = at === null ? null : (batch.days[at] ?? null);
    return day === null || day > asOf ? latest : Math.max(latest, day);
  }, Number.NEGATIVE_INFINITY);
  const since = asOf - last;
  // A time that was missed is asked for until the next one; after that nobody writes it any more.
  if (Number.isFinite(since) && since < 2 * every) return since >= every;
  return (asOf - FIRST_MONDAY) % every === 0;
}
