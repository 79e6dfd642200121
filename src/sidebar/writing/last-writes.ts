import * as text from "../../sentences/made/writing";
import type { LastWrite, LastWritesAnswer } from "../../wire/writing";
import { actionButton } from "../controls/action-button";
import { disclosure } from "../controls/disclosure";
import { element } from "../controls/element";
import { paragraph, quiet } from "../controls/paragraph";
import { whileWorking } from "../controls/while-working";
import type { SidebarContext } from "../section";
import { writtenNotice } from "./written-notice";

const TITLES: Readonly<Record<LastWrite["state"], () => string>> = {
  written: text.written,
  "taken back": text.taken,
  "not known": text.cutOff,
};

/**
 * The last writes as the log has them, each with *Take back*: those of the due list and of other
 * people too, days later as well. Read when it is opened.
 */
export function lastWritesPart(
  context: SidebarContext,
  onTakenBack: () => Promise<void>,
): HTMLElement {
  const list = element("div");
  const { status } = context;
  const doing = text.reading();
  const read = async () => show(await context.call("sidebarLastWrites", null));
  const show = ({ writes, isMore }: LastWritesAnswer) => {
    list.replaceChildren(
      ...(writes.length === 0 ? [paragraph(text.nothingWritten())] : []),
      ...writes.map((write) => item(context, write, onTakenBack)),
      ...(isMore ? [quiet(text.older())] : []),
    );
  };
  const readAgain = actionButton({ label: text.readAgain(), status, doing, work: read });
  return disclosure({
    kind: "group",
    summary: element("h3", {}, text.title()),
    content: () => {
      void whileWorking({ status, doing, controls: [readAgain], work: read });
      return element("div", {}, list, readAgain);
    },
  });
}

function item(
  context: SidebarContext,
  write: LastWrite,
  onTakenBack: () => Promise<void>,
): HTMLElement {
  const { logId, task, about, when, who, state, cells } = write;
  const detail = who === "" ? when : text.when({ when, who });
  return writtenNotice({
    context,
    title: TITLES[state](),
    what: text.what({ task, about }),
    detail,
    onTakenBack,
    answer: { written: cells, logId: state === "written" ? logId : null },
  });
}
