import {
  type CivilDay,
  CREW_HEADER,
  crewRemarks,
  isoDay,
  plannedWork,
  type WorkPart,
} from "../../core";
import type { PlannedDay, PlannedPart, WorkAnswer, WorkRequest } from "../../wire/work";
import { workRemarks } from "../../wording/work-remarks";
import { recordsNow } from "../reading/records-tab";
import { crewAsCalled } from "./called-crew";
import { crewTabs } from "./crew-tabs";

const MOST_DAYS = 366;

/** The coming days' work by day and person. Without a tab of persons there is nothing to plan with. */
export function plannedDays({ days: asked, initials = false }: WorkRequest): WorkAnswer {
  const now = recordsNow();
  const { records, timetable, asOf, door, workbook, settings } = now;
  const tabs = crewTabs(workbook, door, settings.recordsTab);
  const tabNames = {
    asOf: isoDay(asOf),
    crewTab: tabs.crew?.getName() ?? null,
    closedTab: tabs.closed?.getName() ?? null,
    crewHeader: CREW_HEADER,
  };
  const nothing = { persons: [], days: [], overloads: [], parts: [], unassigned: [], remark: null };
  if (tabs.crew === null) return { ...tabNames, ...nothing };
  const crew = crewAsCalled(now, tabs.crew, initials);
  if (crew.crew.length === 0) {
    return { ...tabNames, ...nothing, remark: workRemarks(crewRemarks(crew), "page") };
  }
  const closedDays = door.closedDays(tabs.closed?.getDataRange().getValues() ?? "", asOf);
  const days = Math.min(asked, MOST_DAYS);
  const withoutLooks = !settings.looks;
  const plan = plannedWork({ records, timetable, asOf, days, crew, closedDays, withoutLooks });
  const { placed, leftOver, later, persons, proofs, remarks } = plan;
  const hoursOn = new Map<CivilDay, number>();
  for (const { day, hours } of placed) {
    if (day !== null) hoursOn.set(day, (hoursOn.get(day) ?? 0) + (hours ?? 0));
  }
  return {
    ...tabNames,
    persons,
    remark: workRemarks(remarks, "page"),
    days: plan.days.map(
      ({ day, isClosed, there }): PlannedDay => ({
        day: isoDay(day),
        isClosed,
        hands: there,
        asked: hundredths(hoursOn.get(day) ?? 0),
        there: hundredths(there.reduce((sum, one) => sum + one, 0)),
        isOverloaded: proofs.some((one) => one.days.includes(day)),
      }),
    ),
    overloads: proofs,
    parts: placed.map(plainPart),
    unassigned: [...leftOver, ...later].map(plainPart),
  };
}

function plainPart({ day, task, plants, hours, person, remarks }: WorkPart): PlannedPart {
  return {
    day: day === null ? null : isoDay(day),
    task: task.step.name,
    batch: task.batch,
    place: task.place,
    plants,
    hours,
    person,
    by: isoDay(task.by),
    remarks,
    counted: task.step.counted,
    caution: task.step.caution,
  };
}

/** Sums of hundredths are shown as such, not as 0.30000000000000004. */
function hundredths(hours: number): number {
  return Math.round(hours * 100) / 100;
}
