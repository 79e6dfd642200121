import { recordsRemarks } from "../../wording/records";
import type { DueTask, TodayAnswer } from "../../workbook/sidebar-calls";
import { actionButton } from "../controls/action-button";
import { choice } from "../controls/choice";
import { counted } from "../controls/count-words";
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
      { value: "place", label: "by place" },
      { value: "person", label: "by person" },
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
      doing: "Reading the due list",
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
      element("p", {}, tasks.length === 0 ? nothingDue(days) : `${statusTally(tasks)}.`),
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
    const summary = `${counted(kept.length, "task", "tasks")} marked done since this page opened`;
    const content = () => element("div", {}, ...kept);
    earlier.replaceChildren(disclosure({ summary, content, open: true }));
  };

  const title = (asOf: string) => `Round sheet ${asOf}`;
  const printWork = async () => {
    const request = wanted();
    if (request === null) return;
    const days = Math.min(request.daysAhead + 1, MOST_DAYS);
    const work = await call("sidebarWork", { days, initials: context.people.byInitials() });
    const missing = missingCrew(work);
    if (missing !== null) throw new Error(missing);
    if (work.parts.length + work.unassigned.length === 0) {
      status.say("Nothing to print: the list is empty.");
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
      status.say("Nothing to print: the list is empty.");
      return;
    }
    const { asOf, tasks, takes } = answer;
    const content = roundSheet({ workbook: context.opened()?.workbook ?? "", asOf, tasks, takes });
    await printElement({ title: title(asOf), content, styleId: "round-sheet-style" });
  };
  const saveCalendar = async () => {
    const request = wanted();
    if (request === null) return;
    const { fileName, text } = await call("sidebarCalendar", request);
    saveFile(fileName, "text/calendar;charset=utf-8", text);
    status.say("The calendar file is among your downloads: open it with your calendar.");
  };

  daysAhead.addEventListener("change", () => void load());
  const readAgain = element("button", { type: "button", class: "plain" }, "Read again");
  readAgain.addEventListener("click", () => void load());
  const printing = { label: "Print round sheet", status, doing: "Making the round sheet" };
  const saving = { label: "Calendar file", status, doing: "Making the calendar file" };
  controls.append(
    element("div", { class: "beside" }, field("Days ahead", daysAhead), readAgain),
    element(
      "div",
      { class: "beside" },
      field("Round sheet", sheetBy),
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

function nothingDue(daysAhead: number): string {
  const days = daysAhead === 0 ? "today" : `in the next ${counted(daysAhead, "day", "days")}`;
  return `Nothing is late, due or coming ${days}.`;
}
