/** What the sidebar asks while tabs are chosen, columns read and our tabs made, and what it is told. */

import type { TableTold } from "./beside";
import type { CallShape } from "./call-shape";
import type { ColumnChoice, ColumnGuess } from "./columns";
import type { WordChoice, WordsAsked } from "./words";

export interface SetUpState {
  readonly recordsTab: string;
  /** The tab of the person's own with the steps and their days; null where it is the add-in's. */
  readonly timetableTab: string | null;
  readonly asOf: string;
  /** How many of 1 such ranges should hold, 0 to 1. */
  readonly level: number;
  /** How far the due list looks ahead, whole days, 0 or more. */
  readonly daysAhead: number;
  /** Whether people are called by their initials. */
  readonly initials: boolean;
  /** Whether looks are listed among what is due. */
  readonly looks: boolean;
}

export interface TabCandidate {
  readonly tab: string;
  /** Rows below its header; they are not read before the tab is chosen. */
  readonly rows: number;
}

export interface TimetableCandidate {
  readonly tab: string;
  /** Names of the methods that can be used. */
  readonly methods: readonly string[];
  /** What in it can't be used, in a sentence; of all, where there are no methods. */
  readonly trouble: string | null;
}

export interface ColumnsRequest {
  readonly tab: string;
  /** The person's own tab whose steps columns may mean; null or left out for the add-in's. */
  readonly timetable?: string | null;
  /** What the person has changed by now, so that the words of these columns are asked. */
  readonly columns?: readonly ColumnChoice[];
}

export interface ColumnsAnswer {
  readonly tab: string;
  readonly batches: number;
  readonly columns: readonly ColumnGuess[];
  /** What hardly any answer does without, and the choices that are it; none for a log, whose lines say it. */
  readonly essentials: readonly EssentialColumn[];
  /** Everything that a column may be read as. */
  readonly choices: readonly string[];
  /** What was told of columns and can't be followed any more: the header or the name is gone. */
  readonly lost: readonly ColumnChoice[];
  /** By what the tab of takes compared can be made. */
  readonly comparable: readonly ComparableColumn[];
  /** By which of them it is made; "" for no tab. */
  readonly compareBy: string;
  readonly words: WordsAsked;
  /** Batches that name neither method nor crop: they count as the timetable's first method. */
  readonly withoutMethod: number;
}

export interface EssentialColumn {
  readonly what: "batch" | "start" | "graftDay" | "grafts" | "takes";
  readonly readAs: readonly string[];
}

export interface ComparableColumn {
  readonly header: string;
  /** Whether the tab would rank people by name. */
  readonly people: boolean;
}

export interface SetUpRequest {
  readonly tab: string;
  /** Only the columns that the person changed. */
  readonly columns: readonly ColumnChoice[];
  /** What the person has changed of the tables beside the records. */
  readonly tables?: readonly TableTold[];
  /** What the person has answered of words in cells. */
  readonly words?: readonly WordChoice[];
  /** The person's own tab with the timetable; null or left out to make one from the methods. */
  readonly timetable?: string | null;
  readonly methods: readonly string[];
  /** By what the tab of takes compared is made; "" for no tab, left out to leave it as it is. */
  readonly compareBy?: string | undefined;
  /** Whether people are called by their initials; left out to leave it as it is. */
  readonly initials?: boolean | undefined;
  /** Whether looks are listed; left out to leave it as it is. */
  readonly looks?: boolean | undefined;
  /** Keys of tabs that are made on choice, beside those that are there. */
  readonly tabs?: readonly string[];
}

export interface SetUpAnswer {
  /** Names of the tabs that were made. */
  readonly made: readonly string[];
  /** Names of the tabs that were there and stayed the person's. */
  readonly kept: readonly string[];
  /** What was told of columns before and could not be followed any more, so that it was dropped. */
  readonly forgotten: readonly ColumnChoice[];
  /** Notes of the person's that stood in the way of an answer, such as "Stages!C7", and where they stand now. */
  readonly moved: readonly { readonly from: string; readonly to: string }[];
  /** What is left to ask of words in cells. */
  readonly words: WordsAsked;
}

export interface SetUpCalls {
  readonly sidebarColumns: CallShape<ColumnsRequest, ColumnsAnswer>;
  readonly sidebarSetUp: CallShape<SetUpRequest, SetUpAnswer>;
}
