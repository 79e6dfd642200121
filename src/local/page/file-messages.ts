import type { SheetDraft } from "../workbook-data";

/** What the page gives the thread that reads a file. */
export interface ReadTask {
  readonly bytes: Uint8Array;
  readonly fileName: string;
  /** Names of the add-in's functions, upper case. */
  readonly addInNames: ReadonlySet<string>;
}

/** What it gives back. */
export type ReadAnswer = { readonly drafts: readonly SheetDraft[] } | { readonly trouble: string };
