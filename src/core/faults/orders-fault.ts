/** What a caller of the orders can get wrong. */
export type OrdersFault =
  /** What the first cell holds; null for a blank one. */
  | { readonly code: "no-orders-header"; readonly start: string | null }
  | { readonly code: "no-harvest-months"; readonly found: string }
  | { readonly code: "several-harvests"; readonly places: number };
