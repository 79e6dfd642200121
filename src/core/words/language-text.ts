/* Longer than most: it names every list that a language's file holds. */
import type { HeaderPart } from "./header-part";

/**
 * What a language's file holds, in the form in which people edit it. How to change one:
 *
 * - Words stand between quotes with a comma between: `"sowing, sow, seeding"`. A list that is too
 *   long for a line stands between backticks and may be broken after any comma.
 * - Small letters, no accents, no full stops and no hyphens: "qte greffee" finds "Qté. greffée".
 * - A word may mean one thing only in its table. Languages are mixed within a table, so this holds
 *   between them too.
 * - Names of months and weekdays come from the language's `locales`; only further spellings are
 *   written here, or all of them where date-fns lacks the language.
 *
 * To add a language: copy a file, put its words in, `npm run words`.
 * `npm run types` and tests/core/words name whatever is missing or wrong, with its file and key.
 */
export interface LanguageText {
  /** The language's English name. */
  readonly language: string;
  /** Codes of the locales that its names of months and weekdays are taken from, as date-fns has them. */
  readonly locales: string;

  readonly months: Readonly<Partial<Record<MonthName, string>>>;
  readonly weekdays: Readonly<Partial<Record<WeekdayName, string>>>;
  /** Parts of a month: the first, middle and last third. */
  readonly early: string;
  readonly middle: string;
  readonly late: string;
  readonly week: string;
  /** Small words inside a date that carry no meaning ("3 de marzo", "3rd of March"). */
  readonly dateFillers: string;
  /** Letters by which a header shows how a day is written: those of "dd/mm/yyyy". */
  readonly dayLetters: string;
  /** Between the two ends of a span: "Oct to Mar". */
  readonly upTo: string;

  /** Words in a header that say a column holds days. */
  readonly dayWords: string;
  /** Words in a header that say a column holds plants. */
  readonly countWords: string;
  /** Words in a header that carry no meaning of their own. */
  readonly headerFillers: string;
  /** Words of a header that is a sentence, which carry none either: "How many were grafted". */
  readonly headerVerbs: string;
  /** Headers of the columns of the records. */
  readonly facts: Readonly<Record<BatchFact | EventFact, string>>;
  readonly steps: Readonly<
    Record<CountedStep, CountedStepText> & Record<UncountedStep, UncountedStepText>
  >;
  /**
   * What a header is put together from, by what each word says: "1st tape release" is `loosen`, `wrap`.
   * A word of four letters or more stands for all that begin with it, a longer one before a shorter.
   */
  readonly parts: Readonly<Record<HeaderPart, string>>;

  /** The header of a column of names. */
  readonly name: string;
  /** The header of a first day. */
  readonly from: string;
  /** Headers of the other tables, by table and column. */
  readonly tables: TablesText;
  /** What a word says in a header of these tables; long ones as in `parts`. */
  readonly tableParts: Readonly<Record<TablePart, string>>;
  /** What a tab with each table may be called. */
  readonly tabs: Readonly<Record<TabKind, string>>;

  readonly yes: string;
  readonly no: string;
  /** A cell that stands for "nothing noted". */
  readonly nothing: string;
  /** What says in a cell for a day that the step is not to be done. "Not done" may mean not yet, so it is none. */
  readonly notDone: string;
  /** What stands under a name where nobody knows it, or where there is no one name. */
  readonly noName: string;
  /** A cell that stands for the value above it; signs are known without. */
  readonly ditto: string;
  /** Words that open a row of sums. */
  readonly totals: string;
  /** Before a number that is a guess. */
  readonly about: string;
  readonly dozen: string;
  /** Containers whose number is multiplied: "20 trays x 54". */
  readonly trays: string;
  /** Between containers and what is in each: "20 trays of 54". */
  readonly of: string;
  /** After a share: "80 per cent". */
  readonly percent: string;
  /** What in a log may be one step or another, though a word of it is known. */
  readonly notPlain: string;
  /** What a log calls plants being put elsewhere. */
  readonly moved: string;
  /** What a log calls plants leaving a batch to become another. */
  readonly splitOff: string;
  /** Between two things of which both are meant: "Sowing and grafting". */
  readonly and: string;
  /** Between varieties of which any will do: "Amberlow or Corvane". */
  readonly either: string;
  /** Words under Variety that say any will do, and those that only say it is one. */
  readonly anyVariety: string;
  /** What a person who does every task is said to do. */
  readonly everything: string;
  /** Items of a price list that mean the work of one person. */
  readonly work: string;
  /** Before a unit: "per 100". */
  readonly per: string;
  /** Words in what a step needs that say it takes seed. */
  readonly seedItems: string;
  /** What scion wood is called in what a step needs; the name, or its last word. */
  readonly scionItems: string;
  /** On which days somebody works. */
  readonly workDays: WorkDaysText;
  /** What a cell under Method calls each way of propagation; a phrase goes before its words. */
  readonly ways: Readonly<Record<WayName, string>>;
  /** Words that say that a graft stands at the top, cleft or wedge. */
  readonly atTop: string;
  /** Words that say that a bud is set, in whichever way. */
  readonly budding: string;
  /** Words beside a way that say nothing more: "grafting", "in". */
  readonly graftFillers: string;
  readonly crops: Readonly<Record<CropName, string>>;
  /** Of those, the names of a part of a crop, such as lemons: whoever orders them does not want oranges. */
  readonly cropKinds: string;
  /** What a timetable calls the kinds of steps: what harms if it is skipped, what is counted, what is looked at. */
  readonly stepKinds: Readonly<Record<StepKind, string>>;
  readonly units: Readonly<Record<UnitName, string>>;
}

export type MonthName = (typeof MONTH_NAMES)[number];
export type WeekdayName = (typeof WEEKDAY_NAMES)[number];

export const MONTH_NAMES = [
  "january",
  "february",
  "march",
  "april",
  "may",
  "june",
  "july",
  "august",
  "september",
  "october",
  "november",
  "december",
] as const;

/** As weeks are counted: Monday first. */
export const WEEKDAY_NAMES = [
  "monday",
  "tuesday",
  "wednesday",
  "thursday",
  "friday",
  "saturday",
  "sunday",
] as const;

/** The facts of a batch that a records table may hold in columns of their own. */
export type BatchFact =
  | "batch"
  | "fromLot"
  | "variety"
  | "rootstock"
  | "crop"
  | "method"
  | "place"
  | "grafter"
  | "scionSource"
  | "culled"
  | "dispatched"
  | "closed"
  | "note";

/** The columns that only an event log has: one row an event. */
export type EventFact = "eventDay" | "eventStep" | "eventCount" | "eventPerson" | "eventReason";

/** The steps that are known in every language; see step-key.ts. */
export type CountedStep =
  | "sowing"
  | "germination"
  | "grafting"
  | "bud break"
  | "take count"
  | "ready";
export type UncountedStep =
  | "first release"
  | "first flush"
  | "flush hardening"
  | "branching"
  | "union closed";

export interface UncountedStepText {
  /** Names of the step itself; alone in a header they leave open whether days or plants are meant. */
  readonly name: string;
  /** Headers that mean the day of the step. */
  readonly day: string;
}

export interface CountedStepText extends UncountedStepText {
  /** Headers that mean the plants counted at the step. */
  readonly count: string;
}

export interface WorkDaysText {
  readonly everyDay: string;
  /** Monday to Friday. */
  readonly workingWeek: string;
  readonly weekend: string;
  /** Between two weekdays, beside the words of `upTo`. */
  readonly upTo: string;
  /** Before days, or tasks, that are not meant. */
  readonly except: string;
  /** Beside days that are not worked. */
  readonly off: string;
  readonly half: string;
  readonly morning: string;
  readonly afternoon: string;
  /** Words between that say nothing more. */
  readonly filler: string;
}

/**
 * What one word of a header of orders, crew, closed days, prices or places may say: `hand` is what was delivered, `owed`
 * what is not yet, `sort` a variety, `aside` what no column of ours holds, such as money and addresses.
 */
export type TablePart =
  | "order"
  | "buyer"
  | "want"
  | "hand"
  | "due"
  | "ended"
  | "owed"
  | "aside"
  | "sort"
  | "plants"
  | "person"
  | "task"
  | "hour"
  | "worked"
  | "away"
  | "first"
  | "last"
  | "item"
  | "price"
  | "unit"
  | "hold"
  | "place";

type Headers<Column extends string> = Readonly<Record<Column, string>>;

export interface TablesText {
  readonly orders: Headers<
    "order" | "customer" | "variety" | "wanted" | "by" | "delivered" | "closed"
  >;
  /** `days` are those of the week that are worked, `off` days or stretches. Persons go under `name` and `facts.eventPerson` as well. */
  readonly crew: Headers<
    "person" | "tasks" | "methods" | "hours" | "offFrom" | "offTo" | "days" | "off"
  >;
  /** A first day goes under `from` as well. */
  readonly closedDays: Headers<"day" | "to">;
  readonly prices: Headers<"item" | "price" | "per">;
  /** Places go under `name` and `facts.place`. */
  readonly places: Headers<"holds">;
  /** Samples of seed counted in a tray; batches go under `facts.batch` as well. `up` since the inspection before, `soFar` in all. */
  readonly germination: Headers<"batch" | "sample" | "sownOn" | "sown" | "day" | "up" | "soFar">;
  readonly timetable: Headers<
    | "method"
    | "step"
    | "after"
    | "from"
    | "usual"
    | "by"
    | "counted"
    | "kept"
    | "perPersonHour"
    | "needs"
    | "caution"
    | "source"
    | "kind"
    | "every"
    | "until"
  >;
}

export type TimetableField = keyof TablesText["timetable"];

/** `perhapsClosedDays`: names that other tabs have too, whose header decides. */
export type TabKind =
  | "orders"
  | "crew"
  | "closedDays"
  | "perhapsClosedDays"
  | "places"
  | "prices"
  | "germination";

/**
 * What a step is to the people who work: a job, which harms if it is skipped; a count of plants; or a look
 * at how far they are.
 */
export type StepKind = "job" | "count" | "look";

/** Units that have a name; symbols ("cm", "kg") are alike in every language and stand with their sizes. */
export type UnitName =
  | "centimetre"
  | "metre"
  | "inch"
  | "foot"
  | "litre"
  | "gallon"
  | "gram"
  | "kilogram"
  | "pound"
  | "tonne"
  | "minute"
  | "hour"
  | "piece"
  | "hundred"
  | "thousand";

/** Ways of propagation: `wedge` is at the top, `green` a patch bud of green wood, `shield` in a T. */
export type WayName =
  | "cleft"
  | "wedge"
  | "side"
  | "veneer"
  | "approach"
  | "patch"
  | "green"
  | "shield"
  | "chip"
  | "softwood"
  | "stone"
  | "hypocotyl"
  | "cutting"
  | "seedling";

export type CropName = "cocoa" | "coffee" | "mango" | "rubber" | "cashew" | "avocado" | "citrus";
