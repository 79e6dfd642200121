import { lazily } from "../lazily";
import { tableWords } from "../words";

/** Headers by which each column of a timetable is known, in normal form; in the order of the columns. */
export const timetableWords = lazily(() => tableWords("timetable"));
