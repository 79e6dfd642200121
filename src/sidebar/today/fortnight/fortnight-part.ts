import * as text from "../../../sentences/made/work-page";
import type { WorkAnswer } from "../../../wire/work";
import { disclosure } from "../../controls/disclosure";
import { element } from "../../controls/element";
import { hoursOfHours } from "../../controls/hours-words";
import { longList } from "../../controls/long-list";
import { notes, paragraph, quiet } from "../../controls/paragraph";
import { sentenceNodes } from "../../controls/sentence-nodes";
import { userText } from "../../controls/user-text";
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
    { class: "group", "data-part": "workPlan" },
    element("summary", {}, element("h3", {}, text.fortnight())),
  );
  const refresh = async () => {
    if (!details.open) return;
    await whileWorking({
      status,
      doing: text.planning(),
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
        if (missing !== null) body.append(...notes(answer.remark));
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
  const { days, overloads, parts, persons, unassigned } = answer;
  const most = Math.max(0, ...days.map(({ there, asked }) => Math.max(there, asked)));
  const sum = (hours: readonly number[]) => hours.reduce((all, one) => all + one, 0);
  const [asked, there] = [sum(days.map((day) => day.asked)), sum(days.map((day) => day.there))];
  const unrated = parts.filter(isUnrated).length;
  const isRated = [...parts, ...unassigned].some(({ hours }) => hours !== null);
  // Where no hours are known, nothing is promised.
  const fits = unrated > 0 ? text.fitsRated : text.fits;
  const said =
    overloads.length > 0 ? text.tooMuchHelp() : fits({ hours: hoursOfHours(asked, there) });
  return [
    ...overloads.map(overloadNote),
    unrated > 0 && !isRated ? null : paragraph(said),
    unrated === 0
      ? null
      : paragraph(isRated ? text.unrated({ tasks: unrated }) : text.allUnrated()),
    ...days.map((day) =>
      dayItem({ day, persons, most, parts: parts.filter((part) => part.day === day.day) }),
    ),
    unassigned.length === 0
      ? null
      : disclosure({
          summary: text.unplaced({ tasks: unassigned.length }),
          content: () => longList(unassigned, partItem),
        }),
    ...notes(answer.remark),
    source(answer),
  ].filter((node) => node !== null);
}

/** From where persons and closed days are read. */
function source({ crewTab, closedTab }: WorkAnswer): HTMLElement {
  const tab = userText(crewTab ?? "");
  const said =
    closedTab === null
      ? sentenceNodes(text.personsFrom, { tab })
      : sentenceNodes(text.personsFromClosed, { tab, closed: userText(closedTab) });
  return quiet(...said);
}
