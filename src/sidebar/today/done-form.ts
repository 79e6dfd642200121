import * as text from "../../sentences/made/today-page";
import type { DueTask } from "../../wire/today";
import { element } from "../controls/element";
import { field } from "../controls/field";
import { sentenceNodes } from "../controls/sentence-nodes";
import { shortened } from "../controls/shortened";
import type { StatusLine } from "../controls/status-line";
import { userText } from "../controls/user-text";
import { whileWorking } from "../controls/while-working";

/** What a person says of a task that is done. */
export interface DoneEntry {
  readonly day: string;
  /** Null where not counted. */
  readonly count: number | null;
  readonly who: string;
  readonly note: string;
}

export interface DoneFormOptions {
  readonly task: DueTask;
  /** The day that is offered, ISO text. */
  readonly day: string;
  /** The name that is offered. */
  readonly who: string;
  readonly status: StatusLine;
  readonly onSave: (entry: DoneEntry) => Promise<void>;
  readonly onCancel: () => void;
}

/** The small form under a task. What is wrong with an entry is told by the browser's own messages. */
export function doneForm(options: DoneFormOptions): HTMLFormElement {
  const { task, status, onSave, onCancel } = options;
  const day = element("input", { type: "date", required: true, value: options.day });
  const count = element("input", { type: "number", min: 0, step: 1, inputmode: "numeric" });
  const who = element("input", { type: "text", value: options.who, autocomplete: "off" });
  const note = element("input", { type: "text", autocomplete: "off" });
  const cancel = element("button", { type: "button", class: "plain" }, text.cancel());
  const save = element("button", { type: "submit", class: "main" }, text.save());
  const fields = element(
    "fieldset",
    {},
    element(
      "legend",
      {},
      ...sentenceNodes((facts) => text.doneTask({ task: shortened(task.task), ...facts }), {
        batch: userText(task.batch),
      }),
    ),
    field(text.day(), day, intoHeader(task.dayHeader)),
    task.counted
      ? field(text.counted(), count, intoHeader(task.countHeader) ?? text.countBlank())
      : null,
    field(text.who(), who),
    field(text.note(), note),
    element("div", { class: "buttons" }, save, cancel),
  );
  const form = element("form", { class: "done-form" }, fields);
  cancel.addEventListener("click", onCancel);
  form.addEventListener("submit", (event) => {
    // Let go, it would lead the page away from itself.
    event.preventDefault();
    const entry = {
      day: day.value,
      count: task.counted && count.value !== "" ? Number(count.value) : null,
      who: who.value.trim(),
      note: note.value.trim(),
    };
    void whileWorking({
      status,
      doing: text.writing(),
      controls: [fields],
      work: () => onSave(entry),
    });
  });
  return form;
}

function intoHeader(header: string | null): HTMLElement | null {
  if (header === null || header === "") return null;
  return element("span", {}, ...sentenceNodes(text.goesUnder, { header: userText(header) }));
}
