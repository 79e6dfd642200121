/* Longer than most: its parts stand in files beside; what is left is which of them is asked after which. */
import * as page from "../../sentences/made/page";
import * as text from "../../sentences/made/set-up-page";
import type { TablesAnswer, TableTold } from "../../wire/beside";
import type { ColumnChoice } from "../../wire/columns";
import type { OpenAnswer } from "../../wire/open";
import type { SetUpState } from "../../wire/set-up";
import type { WordChoice } from "../../wire/words";
import { wordPart } from "../check/asked-in-set-up";
import { actionButton } from "../controls/action-button";
import { choice } from "../controls/choice";
import { dayText } from "../controls/day-words";
import { element } from "../controls/element";
import { field } from "../controls/field";
import { group } from "../controls/group";
import { paragraph, quiet } from "../controls/paragraph";
import { plainButton } from "../controls/plain-button";
import { sentenceNodes } from "../controls/sentence-nodes";
import { isolated, shortened } from "../controls/shortened";
import { userText } from "../controls/user-text";
import { whileWorking } from "../controls/while-working";
import type { Section, SidebarContext } from "../section";
import { stateOf } from "../state";
import { type ColumnsForm, columnsForm } from "./columns-form";
import { type CompareChoice, compareChoice } from "./compare-choice";
import { LANGUAGES_READ } from "./languages-read.table";
import { madeNotice } from "./made-notice";
import { makeBar } from "./make-bar";
import { type MethodChoice, methodChoice } from "./method-choice";
import { type MoreTabs, moreTabs } from "./more-tabs";
import { otherRecords } from "./other-records";
import { type TablesForm, tablesForm } from "./tables-form";
import { type TimetableChoice, timetableChoice } from "./timetable-choice";
import { type WordsForm, wordsForm } from "./words-form";

interface SetUpChoices {
  /** The workbook as it was found last; null before. */
  readonly opened: OpenAnswer | null;
  /** The tab with the records; "" where there is none. */
  readonly tab: string;
  /** Its columns as they are read and corrected, and by what takes are compared; null until they were read. */
  readonly columns: {
    readonly form: ColumnsForm;
    readonly words: WordsForm;
    readonly compare: CompareChoice;
    readonly tables: TablesForm;
  } | null;
  /** Whether something was said that the tabs do not follow yet. */
  readonly isChanged: boolean;
  /** How many of its batches name no method. */
  readonly withoutMethod: number;
  readonly methods: MethodChoice;
  readonly timetable: TimetableChoice;
  readonly more: MoreTabs;
}

/**
 * Which tab holds the records, how its columns are read, which methods: then the tabs are made.
 *
 * Longer than most: its parts stand in files beside; what is left is which of them is asked after which, and they
 * all share the same few elements.
 */
export function setUpSection(context: SidebarContext): Section {
  const { call, status, people } = context;
  const head = element("div");
  const fields = element("fieldset", { class: "bare" });
  const columns = element("fieldset", { class: "bare" });
  const result = element("div");
  const questions = element("h3", {}, text.questions());
  const usual = paragraph();
  const others = element("div");
  const state = stateOf<SetUpChoices>({
    opened: null,
    tab: "",
    columns: null,
    isChanged: false,
    withoutMethod: 0,
    methods: methodChoice([]),
    timetable: { elements: [], chosen: () => null },
    more: moreTabs([]),
  });

  /** What was answered of words and not yet used; the table may be read again meanwhile. */
  const given = new Map<string, WordChoice>();
  /** @param kept what was said of columns and not yet used */
  const readColumns = (kept: readonly ColumnChoice[] = []) =>
    whileWorking({
      status,
      doing: text.readingColumns(),
      controls: [fields],
      work: async () => {
        const { tab, timetable, methods, more: tabs } = state.now;
        state.set({ columns: null });
        bar.element.hidden = true;
        columns.replaceChildren();
        result.replaceChildren();
        const own = timetable.chosen();
        const answer = await call("sidebarColumns", { tab, timetable: own });
        const form = columnsForm(answer, {
          people,
          kept,
          onWords: () => void askWords(),
          onChange: changed,
        });
        const words = wordsForm(answer.words, {
          people,
          given,
          onChange: () => tell(),
          // Check has nothing to show before the tabs are made.
          rowsLink: (word) =>
            state.now.opened?.setUp == null
              ? null
              : plainButton(text.goToRows(), () => void context.lead("check", wordPart(word))),
        });
        const showsLooks = state.now.opened?.setUp?.looks ?? true;
        const compare = compareChoice(answer, people, showsLooks);
        const tables = tablesForm({ people, ask: (told, show) => void askTables(told, show) });
        state.set({
          columns: { form, words, compare, tables },
          withoutMethod: answer.withoutMethod,
        });
        const methodsOrNone = own === null ? [methods.element] : [];
        const more = group({
          title: text.moreChoices(),
          tally: "",
          open: false,
          content: () =>
            element("div", {}, ...methodsOrNone, ...compare.elements, ...tabs.elements),
        });
        columns.replaceChildren(
          element("h3", {}, text.stepRead()),
          form.head,
          questions,
          ...form.asked,
          words.element,
          usual,
          quiet(text.mayChange()),
          form.others,
          tables.element,
          element("h3", {}, text.stepMake()),
          paragraph(text.whatIsMade()),
          more,
        );
        bar.element.hidden = false;
        tell();
      },
    });
  const askTables = (told: readonly TableTold[], show: (answer: TablesAnswer) => void) =>
    whileWorking({
      status,
      doing: text.readingColumns(),
      controls: [columns, fields],
      work: async () => show(await call("sidebarTables", { tab: state.now.tab, told })),
    });
  /** What the cells of a column say is asked once it is read as one of words. */
  const askWords = () =>
    whileWorking({
      status,
      doing: text.readingColumns(),
      controls: [fields, columns],
      work: async () => {
        const { tab, timetable, columns: read } = state.now;
        if (read === null) return;
        const asked = { tab, timetable: timetable.chosen(), columns: read.form.changes() };
        const answer = await call("sidebarColumns", asked);
        read.words.ask(answer.words);
        state.set({ withoutMethod: answer.withoutMethod });
        tell();
      },
    });
  const changed = () => {
    state.set({ isChanged: true });
    tell();
  };
  columns.addEventListener("change", changed);
  /** What the button does, and as what batches count that name no method, by all that is chosen now. */
  const tell = () => {
    const { opened, columns: read, withoutMethod: batches, methods, timetable } = state.now;
    bar.show({
      missing: read?.form.missing() ?? [],
      isSetUp: opened?.setUp != null,
      isChanged: state.now.isChanged,
    });
    questions.hidden = columns.querySelector("[data-open]") === null;
    const own = opened?.timetables.find(({ tab }) => tab === timetable.chosen());
    const method = own === undefined ? methods.usual() : own.methods[0];
    usual.hidden = batches === 0 || method === undefined;
    const noMethod = (facts: { readonly method: string }) =>
      text.usualMethod({ batches, ...facts });
    usual.replaceChildren(...sentenceNodes(noMethod, { method: userText(method ?? "") }));
  };
  state.on(["opened", "tab"], ({ opened, tab }) => {
    const note = otherRecords(opened?.candidates ?? [], tab);
    others.replaceChildren(...(note === null ? [] : [note]));
  });
  state.on(["opened"], ({ opened }) => {
    if (opened !== null) head.replaceChildren(...openingWords(opened));
  });
  /** Another tab or timetable: what was said of the one before means nothing. */
  const readAnew = () => {
    given.clear();
    void readColumns();
  };
  const show = (opened: OpenAnswer) => {
    const tabs = tabsOf(opened);
    const before = state.now.tab;
    const tab = tabs.some(({ value }) => value === before) ? before : (tabs[0]?.value ?? "");
    const timetable = timetableChoice(opened, readAnew);
    const methods = methodChoice(opened.methods, tell);
    state.set({ opened, tab, methods, timetable, more: moreTabs(opened.moreTabs) });
    const select = choice(tabs, tab);
    select.addEventListener("change", () => {
      state.set({ tab: select.value });
      readAnew();
    });
    fields.replaceChildren(
      element("h3", {}, text.stepTable()),
      ...(tabs.length === 0
        ? []
        : [field(text.recordsTab(), select), others, ...timetable.elements]),
      readAgain,
      quiet(text.readAgainHint()),
    );
    columns.replaceChildren();
  };
  const make = actionButton({
    label: text.makeTabs(),
    kind: "main",
    status,
    doing: text.making(),
    work: async () => {
      const { tab, columns: read, methods, timetable, more } = state.now;
      const own = timetable.chosen();
      const chosen = own === null ? methods.chosen() : [];
      if (read === null) return;
      const words = read.words.answers();
      if (own === null && methods.element.querySelector("input") !== null && chosen.length === 0) {
        throw new Error(text.noMethod({ group: text.moreChoices() }));
      }
      const answer = await call("sidebarSetUp", {
        tab,
        timetable: own,
        columns: read.form.changes(),
        tables: read.tables.changes(),
        // A method that a word was said to mean is one of theirs, ticked or not.
        methods: own === null ? [...new Set([...chosen, ...read.words.methods()])] : [],
        words,
        compareBy: read.compare.compareBy(),
        initials: people.byInitials(),
        looks: read.compare.looks(),
        tabs: more.chosen(),
      });
      state.set({ isChanged: false });
      read.words.askRest(answer.words);
      const notice = madeNotice(answer, () => context.go("today"));
      result.replaceChildren(notice);
      notice.focus();
      state.set({ opened: await context.reopen() });
      tell();
      status.say(text.tabsAreMade());
    },
  });
  const bar = makeBar(make, columns);
  const readAgain = plainButton(text.readAgain(), () => {
    const kept = state.now.columns?.form.changes() ?? [];
    void whileWorking({
      status,
      doing: page.reading(),
      controls: [readAgain],
      work: async () => show(await context.reopen()),
    }).then(async () => {
      if (state.now.tab === "") return;
      await readColumns(kept);
      if (kept.length > 0) await askWords();
    });
  });

  /** Once only: what the person has corrected and not yet used must not be lost by looking away. */
  const load = async () => {
    const opened = context.opened();
    if (state.now.columns !== null || opened === null) return;
    show(opened);
    if (state.now.tab !== "") await readColumns();
  };
  /** The question about a word or a column, asked of the workbook as it stands now. */
  const lead = async (part: string): Promise<HTMLElement | null> => {
    const read = state.now.columns;
    if (read === null) return null;
    const about = part.slice(part.indexOf(" ") + 1);
    const isWord = part === wordPart(about);
    if (isWord && read.words.card(about) === null) await askWords();
    const led = isWord ? read.words.card(about) : read.form.item(about);
    if (led === null) status.say(text.noQuestion({ about: isolated(about) }));
    return led;
  };
  const heading = element("h2", {}, page.setUp());
  bar.element.hidden = true;
  return {
    element: element("section", {}, heading, bar.element, result, head, fields, columns),
    load,
    lead,
  };
}

function openingWords({ setUp, zones, candidates }: OpenAnswer): HTMLElement[] {
  const note = (sentence: string) => element("p", { class: "note" }, sentence);
  return [
    paragraph(
      ...(setUp === null ? [text.notSetUp({ button: text.makeTabs() })] : setUpWords(setUp)),
    ),
    ...(candidates.length > 0 ? [] : [note(text.noBatches({ languages: LANGUAGES_READ }))]),
    ...(zones === null ? [] : [note(text.zones(zones))]),
  ];
}

function setUpWords({ recordsTab, timetableTab, asOf: day }: SetUpState): (Node | string)[] {
  const told = { asOf: dayText(day), button: text.makeAgain() };
  const records = userText(recordsTab);
  if (timetableTab === null) {
    return sentenceNodes((facts) => text.setUp({ ...told, ...facts }), { records });
  }
  const nodes = { records, timetable: userText(timetableTab) };
  return sentenceNodes((facts) => text.setUpTimetable({ ...told, ...facts }), nodes);
}

/** The tab in use first, then the others as they come. */
function tabsOf({ candidates, setUp }: OpenAnswer): { value: string; label: string }[] {
  const inUse = candidates.filter(({ tab }) => tab === setUp?.recordsTab);
  return [...inUse, ...candidates.filter((one) => !inUse.includes(one))].map(({ tab, rows }) => ({
    value: tab,
    label: text.tabRows({ tab: shortened(tab, 40), rows }),
  }));
}
