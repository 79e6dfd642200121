/** Every word that is read, of every language. */

export {
  everyLanguage,
  everyWord,
  tableWords,
  tabNames,
  wordPattern,
  wordSet,
} from "./all-languages";
export type { HeaderPart } from "./header-part";
export {
  MONTH_NAMES,
  type StepKind,
  type TablePart,
  type TablesText,
  type TimetableField,
  type UnitName,
  type WayName,
} from "./language-text";
export type { BatchFact, EventFact, LanguageWords } from "./language-words";
export { longestBeginning } from "./longest-beginning";
export { normalText, withoutAccents } from "./normal-text";
export { soundOf } from "./sound-of";
export { stepKey } from "./step-key";
