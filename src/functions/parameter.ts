import {
  type BuiltTimetable,
  builtInTimetable,
  type CivilDay,
  type ClosedDaysReading,
  type CrewReading,
  type Orders,
  type PlacesReading,
  type PricesReading,
  type Records,
  type Timetable,
  type ToldWords,
} from "../core";
import {
  cellMustBeReady,
  type Door,
  hidesLooks,
  isMissing,
  levelArgument,
  textArgument,
  wholeNumberArgument,
} from "../door/index";

/** What a reader looks at: its own argument, and what the same call has read before it. */
export interface Given {
  readonly door: Door;
  /** As it stands in the formula helper and in sentences. */
  readonly name: string;
  /** As the spreadsheet handed it over; undefined where it is left out. */
  readonly value: unknown;
  readonly before: ReadBefore;
}

/** What other arguments are read by: see the order in function-of.ts. */
export interface ReadBefore {
  readonly columns?: unknown;
  readonly asOf?: CivilDay | null;
  readonly timetable?: Timetable | BuiltTimetable;
}

/** A kind of argument, declared once: how it is read, and whether it may be left out. */
export interface Parameter<Value> {
  readonly optional: boolean;
  /** What is taken where it is left out, if that is a number: its sentence says it. */
  readonly usual?: number;
  /** @throws InputError in a sentence that starts with the argument's name */
  readonly read: (given: Given) => Value;
}

const needed = <Value>(read: Parameter<Value>["read"]): Parameter<Value> => ({
  optional: false,
  read,
});
const optional = <Value>(read: Parameter<Value>["read"]): Parameter<Value> => ({
  optional: true,
  read,
});

/** What columns mean, as the person says it; read together with the records. */
export const columns = optional<unknown>(({ value }) => value);

/** A day. @throws InputError where it is left out or is none */
export const asOf = needed<CivilDay>(({ door, name, value }) => door.day(name, value));
/** A day; null where it is left out. */
export const asOfOrNone = optional<CivilDay | null>(({ door, name, value }) =>
  isMissing(value) ? null : door.day(name, value),
);

/** What can be used of one; blank for the built-in one. */
export const timetable = needed<Timetable>(({ door, value }) => door.timetable(value));
/** The same where a function had no timetable at first, so that it stands last and may be left out. */
export const timetableOrBuiltIn = optional<Timetable>(({ door, value }) => door.timetable(value));
/** The same with what is wrong in it. */
export const timetableWithFaults = optional<BuiltTimetable>(({ door, value }) =>
  door.timetableWithFaults(value),
);

const stepsOf = ({ timetable: read }: ReadBefore): Timetable => {
  if (read === undefined) return builtInTimetable();
  return "timetable" in read ? read.timetable : read;
};

/** Read by the timetable, the day and the told columns of the same call, where it has them. */
export const records = needed<Records>(({ door, value, before }) =>
  door.records(value, {
    timetable: stepsOf(before),
    asOf: before.asOf ?? null,
    columns: before.columns,
  }),
);

/** The table of orders, its days read as seen from the day that stands before it. */
export const orders = needed<Orders>(({ door, value, before }) =>
  door.hearing(before.columns).orders(value, dayOf(before), wordsOf(door, before)),
);
/** The table of persons with their hours and tasks; it follows the timetable and the day. */
export const crew = needed<CrewReading>(({ door, value, before }) =>
  door.hearing(before.columns).crew(value, {
    timetable: stepsOf(before),
    asOf: dayOf(before),
    words: wordsOf(door, before),
  }),
);
/** Days on which nobody works; none where it is left out. */
export const closedDays = optional<ClosedDaysReading>(({ door, value, before }) =>
  door.hearing(before.columns).closedDays(value, dayOf(before)),
);
/** The table of places with the plants that each holds. */
export const places = needed<PlacesReading>(({ door, value, before }) =>
  door.hearing(before.columns).places(value, wordsOf(door, before)),
);
/** The list of prices. */
export const prices = needed<PricesReading>(({ door, value, before }) =>
  door.hearing(before.columns).prices(value, wordsOf(door, before)),
);
/** The same; no prices where it is left out. */
export const pricesOrNone = optional<PricesReading>(prices.read);

/** A share strictly between 0 and 1. @param usual the share where it is left out */
export const share = (usual: number): Parameter<number> => ({
  ...optional(({ door, name, value }) => levelArgument(name, door.cell(value), usual)),
  usual,
});

/** 0 or more. @param usual the number where it is left out */
export const wholeNumber = (usual: number): Parameter<number> => ({
  ...optional(({ door, name, value }) => wholeNumberArgument(name, door.cell(value), usual)),
  usual,
});
/** Whether looks are left out; they are listed where it is left out. */
export const looks = optional<boolean>(({ door, name, value }) => {
  const cell = door.cell(value);
  cellMustBeReady(name, cell);
  return hidesLooks(cell);
});
/** 0 or more; a blank cell is 0. */
export const neededNumber = needed<number>(({ door, name, value }) =>
  wholeNumberArgument(name, door.cell(value), 0),
);

/** A text that is not blank. */
export const text = needed<string>(({ door, name, value }) => textArgument(name, door.cell(value)));
/** A text; null where it is left out. */
export const textOrNone = optional<string | null>(({ door, name, value }) =>
  isMissing(value) ? null : textArgument(name, door.cell(value)),
);

/** As the spreadsheet hands it over, for what is read together with other arguments. */
export const raw = needed<unknown>(({ value }) => value);
/** The same, where it may be left out. */
export const rawOrNone = optional<unknown>(({ value }) => value);

function wordsOf(door: Door, before: ReadBefore): ToldWords | undefined {
  return door.words(before.columns, stepsOf(before));
}

function dayOf({ asOf: day }: ReadBefore): CivilDay {
  if (day === undefined || day === null)
    throw new Error("a table that needs a day stands before it");
  return day;
}
