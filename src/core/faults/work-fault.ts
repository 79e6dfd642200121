/** What a caller of the plan of work can get wrong. */
export interface WorkFault {
  readonly code: "days-out-of-range";
  readonly most: number;
  readonly found: number;
}
