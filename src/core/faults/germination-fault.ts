/** Why inspections of a sowing can't be measured. */
export type GerminationFault =
  /** Rows of each, which must be as many. */
  | { readonly code: "inspections-differ"; readonly days: number; readonly counts: number }
  | { readonly code: "day-below-zero"; readonly day: number }
  | { readonly code: "days-not-rising"; readonly day: number; readonly before: number }
  | { readonly code: "nothing-sown"; readonly sown: number }
  | { readonly code: "more-up-than-sown"; readonly up: number; readonly sown: number };
