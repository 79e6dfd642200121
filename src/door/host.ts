/** What the add-in needs to know of the spreadsheet that a function is asked from. */
export interface Host {
  /** Wall-clock time of an instant in the SPREADSHEET's zone, as "yyyy-MM-dd HH:mm:ss". */
  wallTime(milliseconds: number): string;
  /** The spreadsheet's locale, such as "en_GB". */
  locale(): string;
}
