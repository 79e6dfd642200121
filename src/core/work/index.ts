/** Tasks set into days and persons, and what they need. */

export { type CrewField, crewTable, crewWords } from "./crew-table";
export { type PlannedWork, plannedWork, WORK_COLUMNS } from "./planned-work";
export type { Proof } from "./proof";
export {
  type ClosedDaysReading,
  closedTable,
  isClosedDays,
  readClosedDays,
} from "./read-closed-days";
export { CREW_HEADER, type CrewReading, crewColumns, crewRemarks, readCrew } from "./read-crew";
export { NEEDS_COLUMNS, type NeedingStep, type WorkNeeds, workNeeds } from "./work-needs";
export type { WorkPart } from "./work-part";
export type { CrewRemark, NeedsRemark, PartRemark, WorkRemark } from "./work-remark";
