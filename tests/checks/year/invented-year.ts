/**
 * A year of an invented nursery of cocoa and mango, as it truly was: what was done to each batch on which day,
 * and which releases were forgotten. Nothing here knows the add-in: no import, so that the truth can't follow it.
 *
 * Days count from 0, 1 January 2026, a Thursday. Chance comes from a small generator of its own (mulberry32,
 * from memory), so that every run has the same year.
 */

export interface TrueBatch {
  readonly name: string;
  readonly crop: "Cocoa" | "Mango";
  readonly place: string;
  readonly sown: { readonly day: number; readonly count: number };
  readonly germinated: { readonly day: number; readonly count: number };
  readonly defoliated: number;
  readonly grafted: { readonly day: number; readonly count: number };
  readonly released: number;
  readonly taken: { readonly day: number; readonly count: number };
  /** Null where the first release left nothing to open again: written as not needed. */
  readonly releasedAgain: number | null;
  readonly ready: { readonly day: number; readonly count: number };
  readonly sold: readonly { readonly day: number; readonly count: number }[];
  /** The first day on which the release is late and not done, where it was forgotten. */
  readonly forgottenFrom: number | null;
}

export const DAYS_IN_YEAR = 365;
/** Batches, by their names, whose first release was forgotten, each with how many days too late it was done. */
const FORGOTTEN = new Map([
  ["C03", 9],
  ["C07", 21],
  ["C11", 4],
  ["M02", 16],
  ["M03", 30],
]);
/** A batch that never came up, and one that had no second wrap. */
const DEAD = "C05";
const OPENED_ONCE = "C08";

interface Course {
  readonly crop: TrueBatch["crop"];
  readonly every: number;
  readonly batches: number;
  readonly first: number;
  readonly plants: readonly [from: number, to: number];
  /** Days from sowing to germination and grafting, from grafting to the rest. */
  readonly days: Readonly<Record<"up" | "graft" | "open" | "count" | "again" | "ready", number>>;
  /** The last day for the first release after grafting, as the nursery's own timetable has it. */
  readonly openBy: number;
}

const COURSES: readonly Course[] = [
  {
    ...{ crop: "Cocoa", every: 14, batches: 17, first: 0, plants: [120, 240], openBy: 18 },
    days: { up: 10, graft: 90, open: 14, count: 30, again: 42, ready: 112 },
  },
  {
    // Seedlings of eight months: the first ones stood there before the year began.
    ...{ crop: "Mango", every: 28, batches: 12, first: -230, plants: [60, 120], openBy: 40 },
    days: { up: 15, graft: 240, open: 30, count: 60, again: 75, ready: 180 },
  },
];

export function inventedYear(seed = 1): readonly TrueBatch[] {
  const chance = mulberry(seed);
  const between = (from: number, to: number) => from + Math.floor(chance() * (to - from + 1));
  const of = (plants: number, share: number) =>
    Math.round(plants * (share + (chance() - 0.5) / 10));
  return COURSES.flatMap(({ crop, every, batches, first, plants, days, openBy }) =>
    Array.from({ length: batches }, (_, at): TrueBatch => {
      const name = `${crop[0]}${String(at + 1).padStart(2, "0")}`;
      const place = crop === "Mango" ? "Field" : at % 2 === 0 ? "Shed A" : "Shed B";
      const sown = { day: first + at * every, count: between(...plants) };
      const up = name === DEAD ? 0 : of(sown.count, 0.88);
      const germinated = { day: sown.day + days.up + between(0, 2), count: up };
      const grafted = { day: sown.day + days.graft + between(0, 3), count: of(up, 0.82) };
      const late = FORGOTTEN.get(name) ?? 0;
      const released = grafted.day + (late > 0 ? openBy + late : days.open + between(0, 2));
      const taken = {
        day: grafted.day + days.count + between(0, 2),
        count: of(grafted.count, 0.78),
      };
      const ready = { day: grafted.day + days.ready + between(0, 5), count: of(taken.count, 0.92) };
      const half = Math.floor(ready.count / 2);
      return {
        ...{ name, crop, place, sown, germinated, grafted, released, taken, ready },
        defoliated: grafted.day - between(8, 10),
        releasedAgain:
          name === OPENED_ONCE ? null : Math.max(grafted.day + days.again, released + 7),
        sold: [
          { day: ready.day + between(2, 6), count: half },
          { day: ready.day + between(9, 14), count: ready.count - half },
        ],
        forgottenFrom: late > 0 ? grafted.day + openBy + 1 : null,
      };
    }),
  );
}

/** Plants that stand at the end of a day, by what was counted and sold till then; null before the sowing. */
export function trulyStanding(batch: TrueBatch, day: number): number | null {
  const counts = [batch.sown, batch.germinated, batch.grafted, batch.taken, batch.ready];
  const last = counts.filter((one) => one.day <= day).pop();
  if (last === undefined) return null;
  if (counts.some((one) => one.day <= day && one.count === 0)) return 0;
  return last.count - trulySold(batch, day);
}

export function trulySold({ sold }: TrueBatch, day: number): number {
  return sold.filter((one) => one.day <= day).reduce((sum, { count }) => sum + count, 0);
}

export interface Deed {
  /** With {} where the batch is named. */
  readonly what: string;
  readonly batch: string;
  /** Null where nobody counted. */
  readonly count: number | null;
}

/** What was done on a day, batch by batch. */
export function doneOn(batches: readonly TrueBatch[], on: number): readonly Deed[] {
  return batches.flatMap((batch) => {
    const counted = (what: string, one: TrueBatch["sown"]) => [{ what, ...one }];
    const plain = (what: string, day: number | null) =>
      day === null ? [] : [{ what, day, count: null }];
    const cameUp = counted("counted {} as up", batch.germinated);
    const all =
      batch.germinated.count === 0
        ? [...counted("sowed {}", batch.sown), ...cameUp]
        : [
            ...[...counted("sowed {}", batch.sown), ...cameUp],
            ...plain("clipped the scion shoots for {}", batch.defoliated),
            ...counted("grafted {}", batch.grafted),
            ...plain("opened the wraps of {}", batch.released),
            ...counted("counted the takes of {}", batch.taken),
            ...plain("opened {} once more", batch.releasedAgain),
            ...counted("counted {} as ready", batch.ready),
            ...batch.sold.flatMap((one) => counted("sold from {}", one)),
          ];
    return all
      .filter(({ day }) => day === on)
      .map(({ what, count }): Deed => ({ what, batch: batch.name, count }));
  });
}

/** Names of the batches whose release is late and not done at the dawn of a day. */
export function trulyForgotten(batches: readonly TrueBatch[], day: number): readonly string[] {
  return batches
    .filter(
      ({ forgottenFrom, released }) =>
        forgottenFrom !== null && day >= forgottenFrom && day <= released,
    )
    .map(({ name }) => name);
}

function mulberry(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
