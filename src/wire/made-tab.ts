/** What is told of a tab that was made for the person. */
export interface MadeTab {
  /** Its name. */
  readonly tab: string;
}
