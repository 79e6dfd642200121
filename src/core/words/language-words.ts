/** The facts of a batch that a records table may hold in columns of their own. */
export type BatchFact =
  | "batch"
  | "fromLot"
  | "variety"
  | "rootstock"
  | "method"
  | "place"
  | "grafter"
  | "scionSource"
  | "culled"
  | "dispatched"
  | "closed"
  | "note";

/** The columns that only an event log has: one row an event. */
export type EventFact = "eventDay" | "eventStep" | "eventCount" | "eventPerson";

/** The words for one step of a method. */
export interface StepWords {
  /** Names of the step itself; alone in a header they leave open whether days or plants are meant. */
  readonly name: readonly string[];
  /** Headers that mean the day of the step. */
  readonly day: readonly string[];
  /** Headers that mean the plants counted at the step. */
  readonly count: readonly string[];
}

/**
 * One language's words. To add a word, add it to a list: small letters, no accents, no
 * full stops ("qty graft", not "Qté. Graft."). To add a language, copy a table and list it in
 * all-languages.ts.
 */
export interface LanguageWords {
  readonly language: string;
  /** Twelve lists, January first: the full name, then the short forms people type. */
  readonly months: readonly (readonly string[])[];
  readonly weekdays: readonly string[];
  /** Parts of a month: the first, middle and last third. */
  readonly early: readonly string[];
  readonly middle: readonly string[];
  readonly late: readonly string[];
  readonly week: readonly string[];
  /** Small words inside a date that carry no meaning ("3 de marzo", "3rd of March"). */
  readonly dateFillers: readonly string[];
  /** Words in a header that say a column holds days. */
  readonly dayWords: readonly string[];
  /** Words in a header that say a column holds plants. */
  readonly countWords: readonly string[];
  /** Words in a header that carry no meaning of their own. */
  readonly headerFillers: readonly string[];
  readonly facts: Readonly<Record<BatchFact | EventFact, readonly string[]>>;
  /** By step key; see step-key.ts. */
  readonly steps: Readonly<Record<string, StepWords>>;
  readonly yes: readonly string[];
  readonly no: readonly string[];
  /** Words that open a row of sums. */
  readonly totals: readonly string[];
  /** Words before a number that is a guess. */
  readonly about: readonly string[];
  readonly dozen: readonly string[];
  /** Containers whose number is multiplied: "20 trays x 54". */
  readonly trays: readonly string[];
  /** What a log calls plants being put elsewhere. */
  readonly moved: readonly string[];
  /** What a log calls plants leaving a batch to become another. */
  readonly splitOff: readonly string[];
  /** Words of a cell that stands for "nothing noted". */
  readonly nothing: readonly string[];
}
