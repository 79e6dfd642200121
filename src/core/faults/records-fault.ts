import type { Cell } from "../cells";

/** Why a range can't be read as records, or what is told of its columns can't be followed. */
export type RecordsFault =
  /** With the range's first cell. */
  | { readonly code: "no-header"; readonly begins: Cell }
  | { readonly code: "columns-unreadable"; readonly name: Cell; readonly header: Cell }
  /** What the third column says of a word is nothing that we know. */
  | { readonly code: "told-as-unknown"; readonly word: string; readonly found: Cell };
