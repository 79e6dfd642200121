import * as page from "../../sentences/made/page";
import * as text from "../../sentences/made/set-up-page";
import type { OpenAnswer } from "../../wire/open";
import type { SetUpState } from "../../wire/set-up";
import { actionButton } from "../controls/action-button";
import { choice } from "../controls/choice";
import { dayText } from "../controls/day-words";
import { element } from "../controls/element";
import { field } from "../controls/field";
import { sentenceNodes } from "../controls/sentence-nodes";
import { shortened } from "../controls/shortened";
import { userText } from "../controls/user-text";
import { whileWorking } from "../controls/while-working";
import type { Section, SidebarContext } from "../section";
import { type ColumnsForm, columnsForm } from "./columns-form";
import { type CompareChoice, compareChoice } from "./compare-choice";
import { LANGUAGES_READ } from "./languages-read.table";
import { madeNotice } from "./made-notice";
import { type MethodChoice, methodChoice } from "./method-choice";
import { otherRecords } from "./other-records";
import { type TimetableChoice, timetableChoice } from "./timetable-choice";

/** Which tab holds the records, how its columns are read, which methods: then the tabs are made. */
export function setUpSection(context: SidebarContext): Section {
  const { call, status, people } = context;
  const head = element("div");
  const fields = element("fieldset", { class: "bare" });
  const columns = element("div");
  const result = element("div");
  let form: ColumnsForm | null = null;
  let compare: CompareChoice | null = null;
  let methods: MethodChoice = methodChoice([]);
  let timetable: TimetableChoice = { elements: [], chosen: () => null };
  let tab = "";

  const readColumns = () =>
    whileWorking({
      status,
      doing: text.readingColumns(),
      controls: [fields],
      work: async () => {
        form = null;
        columns.replaceChildren();
        result.replaceChildren();
        const own = timetable.chosen();
        const answer = await call("sidebarColumns", { tab, timetable: own });
        form = columnsForm(answer, people);
        compare = compareChoice(answer, people);
        const methodsOrNone = own === null ? [methods.element] : [];
        columns.replaceChildren(form.element, ...methodsOrNone, ...compare.elements, make);
      },
    });
  const show = (opened: OpenAnswer) => {
    head.replaceChildren(...openingWords(opened));
    methods = methodChoice(opened.methods);
    const tabs = tabsOf(opened);
    if (!tabs.some(({ value }) => value === tab)) tab = tabs[0]?.value ?? "";
    const others = element("div");
    const tellOthers = () =>
      others.replaceChildren(
        ...[otherRecords(opened.candidates, tab)].filter((one) => one !== null),
      );
    const select = choice(tabs, tab);
    select.addEventListener("change", () => {
      tab = select.value;
      tellOthers();
      void readColumns();
    });
    tellOthers();
    timetable = timetableChoice(opened, () => void readColumns());
    fields.replaceChildren(
      ...(tabs.length === 0
        ? []
        : [field(text.recordsTab(), select), others, ...timetable.elements]),
      readAgain,
    );
    columns.replaceChildren();
  };
  const make = actionButton({
    label: text.makeTabs(),
    kind: "main",
    status,
    doing: text.making(),
    work: async () => {
      const own = timetable.chosen();
      const chosen = own === null ? methods.chosen() : [];
      if (form === null || compare === null) return;
      if (own === null && methods.element.querySelector("input") !== null && chosen.length === 0) {
        throw new Error(text.noMethod());
      }
      const answer = await call("sidebarSetUp", {
        tab,
        timetable: own,
        columns: form.changes(),
        methods: chosen,
        compareBy: compare.compareBy(),
        initials: people.byInitials(),
      });
      const notice = madeNotice(answer, () => context.go("today"));
      result.replaceChildren(notice);
      notice.focus();
      head.replaceChildren(...openingWords(await context.reopen()));
      status.say(text.tabsAreMade());
    },
  });
  const readAgain = element("button", { type: "button", class: "plain" }, text.readAgain());
  readAgain.addEventListener("click", () => {
    void whileWorking({
      status,
      doing: page.reading(),
      controls: [readAgain],
      work: async () => show(await context.reopen()),
    }).then(() => (tab === "" ? undefined : readColumns()));
  });

  /** Once only: what the person has corrected and not yet used must not be lost by looking away. */
  const load = async () => {
    const opened = context.opened();
    if (form !== null || opened === null) return;
    show(opened);
    if (tab !== "") await readColumns();
  };
  const heading = element("h2", {}, page.setUp());
  return { element: element("section", {}, heading, head, fields, columns, result), load };
}

function openingWords({ setUp, zones, candidates }: OpenAnswer): HTMLElement[] {
  const note = (sentence: string) => element("p", { class: "note" }, sentence);
  return [
    element("p", {}, ...(setUp === null ? [text.notSetUp()] : setUpWords(setUp))),
    ...(candidates.length > 0 ? [] : [note(text.noBatches({ languages: LANGUAGES_READ }))]),
    ...(zones === null ? [] : [note(text.zones(zones))]),
  ];
}

function setUpWords({ recordsTab, timetableTab, asOf: day }: SetUpState): (Node | string)[] {
  const asOf = dayText(day);
  const records = userText(recordsTab);
  if (timetableTab === null) {
    return sentenceNodes((facts) => text.setUp({ asOf, ...facts }), { records });
  }
  const nodes = { records, timetable: userText(timetableTab) };
  return sentenceNodes((facts) => text.setUpTimetable({ asOf, ...facts }), nodes);
}

/** The tab in use first, then the others as they come. */
function tabsOf({ candidates, setUp }: OpenAnswer): { value: string; label: string }[] {
  const inUse = candidates.filter(({ tab }) => tab === setUp?.recordsTab);
  return [...inUse, ...candidates.filter((one) => !inUse.includes(one))].map(({ tab, rows }) => ({
    value: tab,
    label: text.tabRows({ tab: shortened(tab, 40), rows }),
  }));
}
