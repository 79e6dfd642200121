import * as text from "../../sentences/made/today-page";
import * as sheet from "../../sentences/made/today-sheet";
import type { TodayAnswer } from "../../wire/today";
import { actionButton } from "../controls/action-button";
import { choice } from "../controls/choice";
import { element } from "../controls/element";
import { field } from "../controls/field";
import type { SidebarContext } from "../section";
import { missingCrew } from "./fortnight/no-crew";
import { personSheet } from "./person-sheet";
import { printElement } from "./print-element";
import { roundSheet } from "./round-sheet";
import { saveFile } from "./save-file";

/** As many days as work can be planned for. */
const MOST_DAYS = 366;

export interface SheetsOptions {
  readonly context: SidebarContext;
  /** How far ahead to look, days; null where what was entered is none, which the browser then says. */
  readonly daysAhead: () => number | null;
  /** The tasks as last read; null before. */
  readonly answer: () => TodayAnswer | null;
}

/** What is taken along from the due tasks: the round sheet by place or person, the calendar file. */
export function sheetControls({ context, daysAhead, answer }: SheetsOptions): HTMLElement[] {
  const { call, status } = context;
  const sheetBy = choice(
    [
      { value: "place", label: text.byPlace() },
      { value: "person", label: text.byPerson() },
    ],
    "place",
  );
  const workbook = () => context.opened()?.workbook ?? "";
  const onPaper = (asOf: string, content: HTMLElement) =>
    printElement({ title: sheet.fileTitle({ day: asOf }), content, styleId: "round-sheet-style" });

  const byPerson = async () => {
    const ahead = daysAhead();
    if (ahead === null) return;
    const days = Math.min(ahead + 1, MOST_DAYS);
    const work = await call("sidebarWork", { days, initials: context.people.byInitials() });
    const missing = missingCrew(work);
    if (missing !== null) throw new Error(missing);
    if (work.parts.length + work.unassigned.length === 0) status.say(text.nothingToPrint());
    else await onPaper(work.asOf, personSheet({ workbook: workbook(), work }));
  };
  const byPlace = async () => {
    const known = answer();
    if (known === null || known.tasks.length === 0) status.say(text.nothingToPrint());
    else await onPaper(known.asOf, roundSheet({ workbook: workbook(), ...known }));
  };
  const saveCalendar = async () => {
    const ahead = daysAhead();
    if (ahead === null) return;
    const file = await call("sidebarCalendar", { daysAhead: ahead });
    saveFile(file.fileName, "text/calendar;charset=utf-8", file.text);
    status.say(text.calendarSaved());
  };
  const print = actionButton({
    label: text.print(),
    status,
    doing: text.makingSheet(),
    work: () => (sheetBy.value === "person" ? byPerson() : byPlace()),
  });
  const save = actionButton({
    label: text.calendarFile(),
    status,
    doing: text.makingCalendar(),
    work: saveCalendar,
  });
  return [
    element("div", { class: "beside" }, field(text.roundSheet(), sheetBy), print),
    element("div", { class: "buttons" }, save),
  ];
}
