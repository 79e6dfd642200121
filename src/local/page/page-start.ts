import type { CatalogueEntry } from "../catalogue";
import type { SheetDraft } from "../workbook-data";

/** Everything that the page is given when it opens (start.json). */
export interface PageStart {
  /** The name of the file that is open. */
  readonly fileName: string;
  readonly drafts: readonly SheetDraft[];
  /** Whether a copy can be saved beside it: the person has named it, it is not the sample. */
  readonly savesBeside: boolean;
  /** The sheet functions of the add-in, as the formula helper shows them. */
  readonly catalogue: readonly CatalogueEntry[];
  /** The add-in's pages by their name without the ending. */
  readonly pages: Readonly<Record<string, string>>;
  /** Where the frame of the sidebar is served: another origin than the page's. */
  readonly sidebarAddress: string;
  readonly locale: string;
  /** null for the zone of the browser. */
  readonly zone: string | null;
  /** null for any order of answers. */
  readonly seed: number | null;
}
