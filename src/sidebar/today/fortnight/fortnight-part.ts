import type { WorkAnswer } from "../../../workbook/sidebar-calls";
import { counted } from "../../controls/count-words";
import { disclosure } from "../../controls/disclosure";
import { element } from "../../controls/element";
import { hoursOfHours } from "../../controls/hours-words";
import { longList } from "../../controls/long-list";
import { userText, wholeText } from "../../controls/user-text";
import { whileWorking } from "../../controls/while-working";
import { initialsTick } from "../../people/initials-tick";
import type { SidebarContext } from "../../section";
import { dayItem } from "./day-item";
import { missingCrew, noCrew } from "./no-crew";
import { overloadNote } from "./overload-note";
import { isUnrated, partItem } from "./part-item";

const DAYS = 14;

export interface FortnightPart {
  readonly element: HTMLElement;
  /** Reads anew what is shown; nothing while it is folded. */
  refresh(): Promise<void>;
}

/** The next fortnight's work against the hands that are there. Asked for when it is opened. */
export function fortnightPart(context: SidebarContext): FortnightPart {
  const { call, status, people } = context;
  const body = element("fieldset", { class: "bare" });
  const details = element(
    "details",
    { class: "group" },
    element("summary", {}, element("h3", {}, "The fortnight, day by day")),
  );
  const refresh = async () => {
    if (!details.open) return;
    await whileWorking({
      status,
      doing: "Planning the fortnight",
      controls: [body],
      work: async () => {
        const initials = people.byInitials();
        const answer = await call("sidebarWork", { days: DAYS, initials });
        // It is asked anew for the other.
        if (initials !== people.byInitials()) return;
        const missing = missingCrew(answer);
        body.replaceChildren(
          ...(missing === null
            ? [...shown(answer), tick]
            : [noCrew(context, { answer, sentence: missing, onMade: made })]),
        );
        if (missing !== null && answer.remark !== null) body.append(note(answer.remark));
        details.append(body);
      },
    });
  };
  /** The button that made the tab is gone: the keyboard goes on from the line above. */
  const made = async () => {
    await refresh();
    details.querySelector("summary")?.focus();
  };
  const tick = initialsTick(people);
  details.addEventListener("toggle", () => void refresh());
  // What was asked for by names must not come back when it is unfolded.
  people.onChange(() => {
    const inTick = tick.contains(document.activeElement);
    body.replaceChildren();
    void refresh().then(() => (inTick ? tick.querySelector("input")?.focus() : undefined));
  });
  return { element: details, refresh };
}

function shown(answer: WorkAnswer): Node[] {
  const { days, overloads, parts, persons, unassigned, remark } = answer;
  const most = Math.max(0, ...days.map(({ there, asked }) => Math.max(there, asked)));
  const sum = (hours: readonly number[]) => hours.reduce((all, one) => all + one, 0);
  const [asked, there] = [sum(days.map((day) => day.asked)), sum(days.map((day) => day.there))];
  const unrated = parts.filter(isUnrated).length;
  const isRated = [...parts, ...unassigned].some(({ hours }) => hours !== null);
  const those = unrated > 0 ? "with known hours " : "";
  // Where no hours are known, nothing is promised.
  const fits =
    overloads.length > 0
      ? "The days are marked “too much”. Hours left in them belong to those who can’t do these tasks."
      : `Nothing ${those}asks for too much: ${hoursOfHours(asked, there)} are taken.`;
  return [
    ...overloads.map(overloadNote),
    unrated > 0 && !isRated ? null : element("p", {}, fits),
    unrated === 0 ? null : element("p", {}, unratedSentence(unrated, isRated)),
    ...days.map((day) =>
      dayItem({ day, persons, most, parts: parts.filter((part) => part.day === day.day) }),
    ),
    unassigned.length === 0
      ? null
      : disclosure({
          summary: `${counted(unassigned.length, "task is", "tasks are")} not set into these days, in part or whole`,
          content: () => longList(unassigned, partItem),
        }),
    remark === null ? null : note(remark),
    source(answer),
  ].filter((node) => node !== null);
}

function unratedSentence(unrated: number, isRated: boolean): string {
  const which = isRated ? counted(unrated, "task", "tasks") : "all tasks";
  return `For ${which} no hours are known: they need a count of plants, and Per person-hour in the timetable.`;
}

function note(remark: string): HTMLElement {
  return element("div", { class: "note" }, wholeText(remark));
}

/** From where persons and closed days are read. */
function source({ crewTab, closedTab }: WorkAnswer): HTMLElement {
  return element(
    "p",
    { class: "quiet" },
    "Persons stand in the tab ",
    userText(crewTab ?? ""),
    closedTab === null
      ? "; days in a tab called Closed days (column Day) would count as closed."
      : element("span", {}, ", closed days in ", userText(closedTab), "."),
  );
}
