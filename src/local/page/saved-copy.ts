/** Where the page hands over the workbook to be saved, relative to its own address. */
export const SAVE_ADDRESS = "save";

/** The media type of .xlsx workbooks, as registered with IANA. */
export const XLSX_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** What the page hears when a copy has been written. */
export interface SavedCopy {
  /** The name of the new file, beside the one that the program was started with. */
  readonly name: string;
}
