import * as text from "../sentences/made/page";
import type { OpenAnswer } from "../wire/open";
import { actionButton } from "./controls/action-button";
import { element } from "./controls/element";
import { leadTo } from "./controls/lead-to";
import { statusLine } from "./controls/status-line";
import { tabList } from "./controls/tab-list";
import { indexPart } from "./faces/index-part";
import { needsSetUp } from "./needs-set-up";
import { peopleShown } from "./people/people-shown";
import type { Call } from "./script-call";
import type { SidebarContext } from "./section";
import { SECTIONS } from "./sections.table";
import { type State, stateOf } from "./state";

interface AppState {
  /** What the script said of the workbook when it was asked last; null before. */
  readonly opened: OpenAnswer | null;
}

export interface SidebarApp {
  readonly sections: HTMLElement;
  readonly status: HTMLElement;
  /** Asks the script what it is bound to, and opens the section that fits. */
  open(): Promise<void>;
}

/** The page's sections, of which one is shown, and the line that tells what happens. */
export function sidebarApp(call: Call): SidebarApp {
  const status = statusLine();
  const state = stateOf<AppState>({ opened: null });
  const inTheWay = inTheWayNotes(state);
  const context: SidebarContext = {
    call,
    status,
    people: peopleShown(),
    opened: () => state.now.opened,
    reopen: async () => {
      const before = state.now.opened?.setUp?.initials ?? false;
      const opened = await call("sidebarOpen", null);
      state.set({ opened });
      // What was ticked on the page stays, unless the workbook says otherwise since.
      const initials = opened.setUp?.initials ?? false;
      if (initials !== before) context.people.choose(initials);
      return opened;
    },
    go: (key, part) => {
      void choose(key);
      const led = document.querySelector(`#section-${key} [data-part="${part}"]`);
      if (led instanceof HTMLDetailsElement) led.open = true;
      (led?.querySelector("summary") ?? tabOf(key))?.focus();
    },
    lead: async (key, part) => {
      tabOf(key)?.focus();
      const section = await choose(key);
      const led = await section?.lead?.(part);
      if (led != null) leadTo(led);
    },
  };
  const entries = SECTIONS.map(({ key, title, section: make }) => {
    const section = make(context);
    // Set up alone has something to do before Set up.
    return {
      key,
      title: title(),
      section: key === "set-up" ? section : needsSetUp(context, section),
    };
  });
  const panels = entries.map(({ section }) => element("div", {}, section.element));
  const tabs = tabList(
    text.sections(),
    entries.map(({ key, title }, index) => ({ key, title, panel: panels[index] as HTMLElement })),
    (key) => void choose(key),
  );
  const choose = async (key: string) => {
    tabs.show(key);
    const section = entries.find((entry) => entry.key === key)?.section;
    await section?.load();
    return section;
  };
  const start = element("div", { class: "start" });
  const sections = element("div", {}, start);

  const open = async () => {
    const end = status.working(text.reading());
    try {
      const { setUp } = await context.reopen();
      sections.replaceChildren(inTheWay, tabs.element, ...panels, indexPart(context));
      void choose(setUp === null ? "set-up" : "today");
    } catch (error) {
      start.replaceChildren(tryAgain);
      status.fail(error instanceof Error ? error.message : String(error));
    } finally {
      end();
    }
  };
  const tryAgain = actionButton({
    label: text.tryAgain(),
    kind: "main",
    status,
    doing: text.reading(),
    work: open,
  });
  return { sections, status: status.element, open };
}

function tabOf(key: string): HTMLElement | null {
  return document.getElementById(`tab-${key}`);
}

/** Tabs that show no answer are named above all sections. */
function inTheWayNotes(state: State<AppState>): HTMLElement {
  const inTheWay = element("div", { role: "status" });
  state.on(["opened"], ({ opened }) => {
    const sentences = opened?.inTheWay ?? [];
    inTheWay.replaceChildren(...sentences.map((text) => element("p", { class: "note" }, text)));
  });
  return inTheWay;
}
