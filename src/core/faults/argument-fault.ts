import type { Cell, Unread } from "../cells";

/** What is wrong with an argument that a caller gave, by the argument's name. */
export type ArgumentFault =
  | {
      readonly code: "argument-missing";
      readonly argument: string;
      readonly needs: "day" | "name" | "table" | "crew" | "places";
    }
  | {
      readonly code: "argument-unreadable";
      readonly argument: string;
      readonly wanted: "day" | "number" | "text";
      readonly found: Cell;
    }
  | { readonly code: "level-out-of-range"; readonly argument: string; readonly found: Cell }
  | {
      readonly code: "wanted-out-of-range";
      readonly argument: string;
      readonly most: number;
      readonly found: number;
    }
  | { readonly code: "below-one-day"; readonly argument: string; readonly found: number }
  | { readonly code: "not-a-count"; readonly argument: string; readonly why: Unread }
  | { readonly code: "no-plants"; readonly successes: number; readonly trials: number }
  /** Two ranges that go together, each as rows and columns. */
  | {
      readonly code: "sizes-differ";
      readonly taken: readonly [rows: number, columns: number];
      readonly grafted: readonly [rows: number, columns: number];
    }
  /** A cell that shows an error, or is still loading. */
  | {
      readonly code: "not-ready-yet";
      readonly argument: string;
      /** From 1 in the range; null where the argument is one cell. */
      readonly row: number | null;
      /** Its header, or its number from 1; null where that is not told. */
      readonly column: string | null;
      /** The error, such as "#N/A"; null while it loads. */
      readonly shown: string | null;
    };
