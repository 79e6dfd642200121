import { type CrewReading, initialsOf, peopleOf } from "../../core";
import type { RecordsNow } from "../reading/records-tab";

/**
 * The persons of the crew's tab, called by their initials where that is wanted: the same as in the
 * records, whose people come first. So nothing that is planned with them holds a name.
 */
export function crewAsCalled(
  { records, timetable, asOf, door }: RecordsNow,
  crewTab: GoogleAppsScript.Spreadsheet.Sheet,
  initials: boolean,
): CrewReading {
  const reading = door.crew(crewTab.getDataRange().getValues(), {
    timetable,
    asOf,
    words: records.words,
  });
  if (!initials) return reading;
  const called = initialsOf(peopleOf(records));
  return {
    ...reading,
    crew: reading.crew.map((person) => ({ ...person, name: called(person.name) })),
    withoutHours: reading.withoutHours.map(called),
  };
}
