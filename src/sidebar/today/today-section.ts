import * as text from "../../sentences/made/today-page";
import * as sheet from "../../sentences/made/today-sheet";
import type { DueTask, TodayAnswer } from "../../wire/today";
import { recordsRemarks } from "../../wording/records";
import { actionButton } from "../controls/action-button";
import { choice } from "../controls/choice";
import { dayText } from "../controls/day-words";
import { disclosure } from "../controls/disclosure";
import { element } from "../controls/element";
import { field } from "../controls/field";
import { wholeText } from "../controls/user-text";
import { whileWorking } from "../controls/while-working";
import { type Section, type SidebarContext, setUpOf } from "../section";
import { lastWritesPart } from "../writing/last-writes";
import { fortnightPart } from "./fortnight/fortnight-part";
import { missingCrew } from "./fortnight/no-crew";
import { personSheet } from "./person-sheet";
import { placeGroup } from "./place-group";
import { byPlace, statusTally } from "./places";
import { printElement } from "./print-element";
import { roundSheet } from "./round-sheet";
import { saveFile } from "./save-file";
import { taskItem } from "./task-item";

/** With more tasks than this the places are folded: the person chooses where to look. */
const TASKS_UNFOLDED = 30;
const USUAL_DAYS_AHEAD = 7;
/** As many as work can be planned for. */
const MOST_DAYS = 366;

/** What is late, due and coming, by place; marking done, the round sheet and the calendar file. */
export function todaySection(context: SidebarContext): Section {
  const { call, status } = context;
  const daysAhead = element("input", { type: "number", min: 0, max: 730, step: 1, required: true });
  const controls = element("fieldset", { class: "bare" });
  const sheetBy = choice(
    [
      { value: "place", label: text.byPlace() },
      { value: "person", label: text.byPerson() },
    ],
    "place",
  );
  const fortnight = fortnightPart(context);
  const head = element("div");
  const earlier = element("div");
  const list = element("div");
  let answer: TodayAnswer | null = null;
  let lastWho = "";
  let notices: HTMLElement[] = [];

  /** Null where the number is none; the browser says so then. */
  const wanted = () => {
    if (daysAhead.value === "" && !daysAhead.validity.badInput) {
      daysAhead.value = String(setUpOf(context)?.daysAhead ?? USUAL_DAYS_AHEAD);
    }
    return daysAhead.reportValidity() ? { daysAhead: Number(daysAhead.value) } : null;
  };
  const load = async () => {
    const request = wanted();
    if (request === null) return;
    await whileWorking({
      status,
      doing: text.loading(),
      controls: [controls],
      work: async () => {
        answer = await call("sidebarToday", request);
        keepNotices();
        show(answer, request.daysAhead);
      },
    });
    void fortnight.refresh();
  };
  const show = ({ asOf, tasks, remarks }: TodayAnswer, days: number) => {
    head.replaceChildren(
      element("h2", {}, dayText(asOf)),
      element(
        "p",
        {},
        tasks.length === 0
          ? text.nothingDue({ days })
          : text.tallyAll({ tally: statusTally(tasks) }),
      ),
    );
    const remark = recordsRemarks(remarks, "page");
    if (remark !== null) head.append(element("div", { class: "note" }, wholeText(remark)));
    const open = tasks.length <= TASKS_UNFOLDED;
    const item = (task: DueTask) =>
      taskItem({ context, task, asOf, lastWho: () => lastWho, onWritten });
    list.replaceChildren(...byPlace(tasks).map((group) => placeGroup(group, open, item)));
  };
  const onWritten = (notice: HTMLElement, who: string) => {
    lastWho = who;
    notices.push(notice);
  };
  /** What was written stays in sight, and can be taken back, when the list is read anew. */
  const keepNotices = () => {
    if (notices.length === 0) return;
    const kept = [...earlier.querySelectorAll<HTMLElement>(".written"), ...notices];
    notices = [];
    const summary = text.markedDone({ tasks: kept.length });
    const content = () => element("div", {}, ...kept);
    earlier.replaceChildren(disclosure({ summary, content, open: true }));
  };

  const title = (asOf: string) => sheet.fileTitle({ day: asOf });
  const printWork = async () => {
    const request = wanted();
    if (request === null) return;
    const days = Math.min(request.daysAhead + 1, MOST_DAYS);
    const work = await call("sidebarWork", { days, initials: context.people.byInitials() });
    const missing = missingCrew(work);
    if (missing !== null) throw new Error(missing);
    if (work.parts.length + work.unassigned.length === 0) {
      status.say(text.nothingToPrint());
      return;
    }
    const content = personSheet({ workbook: context.opened()?.workbook ?? "", work });
    await printElement({ title: title(work.asOf), content, styleId: "round-sheet-style" });
  };
  const print = async () => {
    if (sheetBy.value === "person") {
      await printWork();
      return;
    }
    if (answer === null || answer.tasks.length === 0) {
      status.say(text.nothingToPrint());
      return;
    }
    const { asOf, tasks, takes } = answer;
    const content = roundSheet({ workbook: context.opened()?.workbook ?? "", asOf, tasks, takes });
    await printElement({ title: title(asOf), content, styleId: "round-sheet-style" });
  };
  const saveCalendar = async () => {
    const request = wanted();
    if (request === null) return;
    const file = await call("sidebarCalendar", request);
    saveFile(file.fileName, "text/calendar;charset=utf-8", file.text);
    status.say(text.calendarSaved());
  };

  daysAhead.addEventListener("change", () => void load());
  const readAgain = element("button", { type: "button", class: "plain" }, text.readAgain());
  readAgain.addEventListener("click", () => void load());
  const printing = { label: text.print(), status, doing: text.makingSheet() };
  const saving = { label: text.calendarFile(), status, doing: text.makingCalendar() };
  controls.append(
    element("div", { class: "beside" }, field(text.ahead(), daysAhead), readAgain),
    element(
      "div",
      { class: "beside" },
      field(text.roundSheet(), sheetBy),
      actionButton({ ...printing, work: print }),
    ),
    element("div", { class: "buttons" }, actionButton({ ...saving, work: saveCalendar })),
  );
  const last = lastWritesPart(context, load);
  return {
    element: element("section", {}, head, controls, earlier, fortnight.element, list, last),
    load,
  };
}
