import * as text from "../../sentences/made/today-page";
import type { DueTask } from "../../wire/today";
import type { RecordRequest } from "../../wire/writing";
import { actionButton } from "../controls/action-button";
import { windowText } from "../controls/day-words";
import { disclosure } from "../controls/disclosure";
import { element } from "../controls/element";
import { paragraph, quiet } from "../controls/paragraph";
import { isolated } from "../controls/shortened";
import { userText, wholeText } from "../controls/user-text";
import type { SidebarContext } from "../section";
import { stateOf } from "../state";
import { askedList } from "../writing/asked-list";
import { writtenNotice } from "../writing/written-notice";
import { type DoneEntry, doneForm } from "./done-form";
import { hoursWords, plantsWords, statusWords } from "./task-words";

export interface TaskItemOptions {
  readonly context: SidebarContext;
  readonly task: DueTask;
  readonly asOf: string;
  /** Who did the task before: most often the same person. */
  readonly lastWho: () => string;
  readonly onWritten: (notice: HTMLElement, who: string) => void;
}

/** A task with its facts, and all that leads to its being marked done. */
export function taskItem(options: TaskItemOptions): HTMLElement {
  const { task } = options;
  const status = element("span", { class: `mark ${task.status}` }, statusWords(task));
  const hours = hoursWords(task);
  const facts = [plantsWords(task), hours].filter((fact) => fact !== null).join(" · ");
  return element(
    "article",
    { class: "task" },
    element("h4", {}, userText(task.task), " · ", userText(task.batch)),
    paragraph(status, ` ${windowText(task.from, task.by)}`),
    paragraph(facts),
    task.caution === ""
      ? null
      : disclosure({ summary: text.caution(), content: () => wholeText(task.caution) }),
    task.dayHeader === null ? quiet(text.reminder()) : null,
    markDone(options, status),
  );
}

interface MarkDoneState {
  /** With what was entered, until that is written; null before it was opened. */
  readonly form: HTMLFormElement | null;
}

/** That the task is not to be done at all: one press, since it can be taken back. */
function notToDoButton(
  { context: { status }, task }: TaskItemOptions,
  work: () => Promise<void>,
): HTMLButtonElement {
  const doing = text.writing();
  const button = actionButton({ label: text.notToDo(), status, doing, work });
  const facts = { task: isolated(task.task), batch: isolated(task.batch) };
  button.setAttribute("aria-label", text.notToDoOf(facts));
  return button;
}

/**
 * The place under a task that holds in turn the buttons, the form, the questions, the notice.
 *
 * Longer than most: each leads to another, and back.
 */
function markDone(options: TaskItemOptions, mark: HTMLElement): HTMLElement {
  const { context, task, asOf, lastWho, onWritten } = options;
  const holder = element("div", { class: "mark-done" });
  const what = `${task.task}, ${task.batch}`;
  const label = text.markDoneOf({ task: isolated(task.task), batch: isolated(task.batch) });
  const open = element(
    "button",
    { type: "button", class: "plain", "aria-label": label },
    text.markDone(),
  );
  const notToDo = notToDoButton(options, () =>
    record({ day: asOf, count: null, who: lastWho(), note: "", notDone: true }, [], notToDo),
  );
  const buttons = task.isLook ? [open] : [element("div", { class: "buttons" }, open, notToDo)];
  const state = stateOf<MarkDoneState>({ form: null });

  const showButton = (focused: HTMLElement = open) => {
    holder.replaceChildren(...buttons);
    focused.focus();
  };
  /** @param sure the questions that were asked and answered already */
  const record = async (
    entry: DoneEntry & Pick<RecordRequest, "notDone">,
    sure: readonly string[],
    pressed: HTMLElement = open,
  ): Promise<void> => {
    const request = { batch: task.batch, task: task.task, ...entry, sure };
    const answer = await context.call("sidebarRecord", request);
    if (answer.written.length === 0 && answer.asked.length === 0) {
      throw new Error(text.rowMayHaveChanged());
    }
    if (answer.written.length === 0) {
      const asked = askedList({
        questions: answer.asked,
        status: context.status,
        onAnyway: () => record(entry, [...sure, ...answer.asked.map(({ id }) => id)], pressed),
        onLeave: () => {
          showButton(pressed);
          context.status.say(text.nothingWritten());
        },
      });
      holder.replaceChildren(asked);
      asked.focus();
      return;
    }
    state.set({ form: null });
    const before = mark.textContent;
    mark.textContent = entry.notDone ? text.notToDo() : text.done();
    const onTakenBack = async () => {
      mark.textContent = before;
      if (holder.isConnected) holder.append(...buttons);
    };
    const notice = writtenNotice({
      context,
      title: entry.notDone ? text.notToDoWritten() : text.doneAndWritten(),
      what,
      answer,
      onTakenBack,
    });
    holder.replaceChildren(notice);
    notice.focus();
    context.status.say(text.written());
    onWritten(notice, entry.who);
  };
  open.addEventListener("click", () => {
    const form =
      state.now.form ??
      doneForm({
        task,
        day: asOf,
        who: lastWho(),
        status: context.status,
        onSave: (entry) => record(entry, []),
        onCancel: () => showButton(),
      });
    state.set({ form });
    holder.replaceChildren(form);
    form.querySelector("input")?.focus();
  });
  holder.append(...buttons);
  return holder;
}
