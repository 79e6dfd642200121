/** Everything in the records that a person should look at. */

export type { TroubleEntry } from "./by-cause";
export { CHECK_COLUMNS, type CheckedRecords, checkedRecords } from "./checked-records";
export { type OpenWords, openWords } from "./open-words";
