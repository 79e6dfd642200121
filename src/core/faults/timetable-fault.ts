import type { TimetableField } from "../words";

/** Where in a timetable something stands that can't be used, and what is left out because of it. */
interface At {
  /** From 1 at the top of the range. */
  readonly row: number;
  readonly column: TimetableField;
  /** The cell's text. */
  readonly found: string;
  /** The cell alone, its row with the step, or all of the method. */
  readonly leftOut: "cell" | "row" | "method";
}

/** Which fault it is, with the names that it takes to say it. */
type Kind =
  | { readonly code: "no-number" }
  | { readonly code: "step-unnamed" }
  | {
      readonly code:
        | "no-usual-day"
        | "days-must-rise"
        | "days-not-whole"
        | "kept-out-of-range"
        | "rate-not-above-0"
        | "needs-unreadable"
        | "no-such-kind"
        | "care-without-start";
      readonly step: string;
    }
  | { readonly code: "before-parent"; readonly step: string; readonly after: string }
  | { readonly code: "too-many-days"; readonly step: string; readonly most: number }
  | {
      readonly code: "same-step";
      readonly step: string;
      readonly other: string;
      readonly method: string;
    }
  | { readonly code: "no-such-step"; readonly after: string; readonly method: string }
  /** The step that it is counted from is left out. */
  | { readonly code: "after-left-out"; readonly after: string }
  /** It is work before a step, or care that is repeated: no day of a batch. */
  | { readonly code: "counted-from-beside"; readonly after: string }
  /** Each of the steps is counted from the next, the last from the first. */
  | { readonly code: "circle"; readonly steps: readonly string[] };

/** Something in a timetable that can't be used; src/wording says it. */
export type TimetableFault = At & Kind;

/** Why a timetable can't be used at all, or lacks what is asked of it. */
export type TimetableRefusal =
  | { readonly code: "no-steps" }
  | { readonly code: "unknown-method"; readonly name: string; readonly known: readonly string[] }
  /** The name, such as that of a crop, may be any of these. */
  | { readonly code: "methods-fit"; readonly name: string; readonly fitting: readonly string[] }
  /** With the first fault, and how many more there are. */
  | {
      readonly code: "timetable-unusable";
      readonly fault: TimetableFault;
      readonly more: number;
    };
