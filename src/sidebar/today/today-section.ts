import { dayLines } from "../../core";
import * as text from "../../sentences/made/today-page";
import type { DueTask, TodayAnswer } from "../../wire/today";
import { recordsRemarks } from "../../wording/records";
import { dayText } from "../controls/day-words";
import { disclosure } from "../controls/disclosure";
import { element } from "../controls/element";
import { field } from "../controls/field";
import { notes, paragraph } from "../controls/paragraph";
import { plainButton } from "../controls/plain-button";
import { whileWorking } from "../controls/while-working";
import { facePart } from "../faces/face-part";
import { type Section, type SidebarContext, setUpOf } from "../section";
import { stateOf } from "../state";
import { lastWritesPart } from "../writing/last-writes";
import { fortnightPart } from "./fortnight/fortnight-part";
import { placeGroup } from "./place-group";
import { byPlace, statusTally } from "./places";
import { sheetControls } from "./sheets";
import { taskItem } from "./task-item";

/** With more lines than this the places are folded: the person chooses where to look. */
const LINES_UNFOLDED = 30;
const USUAL_DAYS_AHEAD = 7;

interface TodayState {
  /** As last read; null before. */
  readonly answer: TodayAnswer | null;
  /** For how many days ahead that was asked. */
  readonly days: number;
  /** Who did a task last: most often the same person does the next. */
  readonly lastWho: string;
  /** What was written since the list was read, each under its task. */
  readonly justWritten: readonly HTMLElement[];
  /** What was written before that: it stays in sight, and can be taken back. */
  readonly earlier: readonly HTMLElement[];
}

/** What is late, due and coming, by place; marking done, the round sheet and the calendar file. */
export function todaySection(context: SidebarContext): Section {
  const { call, status } = context;
  const daysAhead = element("input", { type: "number", min: 0, max: 730, step: 1, required: true });
  const controls = element("fieldset", { class: "bare" });
  const fortnight = fortnightPart(context);
  const head = element("div");
  const earlier = element("div");
  const list = element("div");
  const state = stateOf<TodayState>({
    answer: null,
    days: USUAL_DAYS_AHEAD,
    lastWho: "",
    justWritten: [],
    earlier: [],
  });

  /** Null where the number is none; the browser says so then. */
  const wanted = () => {
    if (daysAhead.value === "" && !daysAhead.validity.badInput) {
      daysAhead.value = String(setUpOf(context)?.daysAhead ?? USUAL_DAYS_AHEAD);
    }
    return daysAhead.reportValidity() ? Number(daysAhead.value) : null;
  };
  const load = async () => {
    const days = wanted();
    if (days === null) return;
    await whileWorking({
      status,
      doing: text.loading(),
      controls: [controls],
      work: async () => {
        const answer = await call("sidebarToday", { daysAhead: days });
        const { justWritten, earlier: before } = state.now;
        const kept = justWritten.length === 0 ? before : [...before, ...justWritten];
        state.set({ answer, days, justWritten: [], earlier: kept });
      },
    });
    void fortnight.refresh();
  };
  state.on(["earlier"], (now) => {
    const summary = text.markedDone({ tasks: now.earlier.length });
    const content = () => element("div", {}, ...now.earlier);
    earlier.replaceChildren(disclosure({ summary, content, open: true }));
  });
  state.on(["answer"], ({ answer, days }) => {
    if (answer === null) return;
    const { asOf, tasks } = answer;
    head.replaceChildren(...headOf(answer, days));
    const open = dayLines(tasks).length <= LINES_UNFOLDED;
    const item = (task: DueTask) =>
      taskItem({ context, task, asOf, lastWho: () => state.now.lastWho, onWritten });
    list.replaceChildren(...byPlace(tasks).map((group) => placeGroup(group, open, item)));
  });
  const onWritten = (notice: HTMLElement, lastWho: string) =>
    state.set({ lastWho, justWritten: [...state.now.justWritten, notice] });

  daysAhead.addEventListener("change", () => void load());
  const readAgain = plainButton(text.readAgain(), () => void load());
  controls.append(
    element("div", { class: "beside" }, field(text.ahead(), daysAhead), readAgain),
    ...sheetControls({ context, daysAhead: wanted, answer: () => state.now.answer }),
  );
  const last = lastWritesPart(context, load);
  const faces = [facePart(context, "needs"), facePart(context, "places")];
  return {
    element: element(
      "section",
      {},
      head,
      controls,
      earlier,
      fortnight.element,
      list,
      ...faces,
      last,
    ),
    load,
  };
}

function headOf({ asOf, tasks, remarks }: TodayAnswer, days: number): HTMLElement[] {
  const remark = recordsRemarks(remarks, "page");
  return [
    element("h2", {}, dayText(asOf)),
    paragraph(
      tasks.length === 0
        ? text.nothingDue({ days, leftOut: remark === null ? "no" : "yes" })
        : text.tallyAll({ tally: statusTally(tasks) }),
    ),
    ...notes(remark),
  ];
}
