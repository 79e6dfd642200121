/** What a caller can get wrong in a table beside the records. */
export type TableFault =
  | {
      readonly code: "no-header-row";
      readonly argument: string;
      /** Those that its header must have. */
      readonly columns: readonly string[];
    }
  /** Row from 1; what an error shows, null for a cell that is still loading. */
  | {
      readonly code: "row-not-ready";
      readonly argument: string;
      readonly row: number;
      readonly shown: string | null;
    };
