/** What stands in a column of the records, and what to show instead where it names people. */
export interface NamedText {
  /** Empty where the column is blank. */
  readonly text: string;
  /** Initials, each told from all others'; null where the text names nobody. */
  readonly initials: string | null;
}
