/** What a caller of the takes can get wrong. */
export type TakesFault =
  | {
      readonly code: "no-such-column";
      /** What the caller calls the argument that names it. */
      readonly argument: string;
      readonly name: string;
      /** The columns that the records have. */
      readonly known: readonly string[];
    }
  | { readonly code: "compared-and-evened"; readonly argument: string; readonly name: string }
  | { readonly code: "no-grafts" }
  | { readonly code: "no-takes" }
  | { readonly code: "no-such-period"; readonly found: string }
  | {
      readonly code: "more-taken-than-grafted";
      readonly taken: number;
      readonly grafted: number;
    };
