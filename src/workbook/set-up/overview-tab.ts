import * as text from "../../sentences/made/overview";
import * as page from "../../sentences/made/page";
import { linkTo } from "../host/formula-text";
import { gridTabs } from "../host/grid-tabs";
import { minuteNow } from "../host/minute-now";
import { dueTabOf } from "../tabs/due-tab-found";
import { makeTab } from "../tabs/make-tab";
import { CHOSEN_TABS, isPlan, OWN_TABS, ownTab, PLAN_TAB } from "../tabs/own-tabs";
import type { TabCell } from "../tabs/tab-content";

type Workbook = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Own = Exclude<keyof typeof OWN_TABS, "overview">;

/** Sections of the page. */
const SECTION = {
  today: page.today,
  ahead: page.ahead,
  takes: page.takes,
  orders: page.orders,
  check: page.check,
  "set-up": page.setUp,
} as const;

/** An answer: its tab, and where the page has it. */
export interface Face {
  readonly tab: Own | "plan";
  readonly section: keyof typeof SECTION;
  readonly group: "daily" | "batches" | "takes" | "materials" | "behind";
}

const face = (tab: Face["tab"], section: Face["section"], group: Face["group"]): Face => ({
  tab,
  section,
  group,
});

/** All answers that have a tab, in the order in which they are looked for. */
export const FACES: readonly Face[] = [
  face("due", "today", "daily"),
  face("workPlan", "today", "daily"),
  face("plan", "orders", "daily"),
  face("stages", "ahead", "batches"),
  face("ready", "ahead", "batches"),
  face("lookback", "ahead", "batches"),
  face("germination", "ahead", "batches"),
  face("balance", "takes", "batches"),
  face("losses", "takes", "batches"),
  face("takes", "takes", "takes"),
  face("takesCompared", "takes", "takes"),
  face("takesTrend", "takes", "takes"),
  face("takeReasons", "takes", "takes"),
  face("places", "today", "materials"),
  face("needs", "today", "materials"),
  face("costs", "orders", "materials"),
  face("checks", "check", "behind"),
  face("settings", "set-up", "behind"),
  face("timetable", "set-up", "behind"),
  face("log", "today", "behind"),
];

const CHOSEN: ReadonlySet<string> = new Set(CHOSEN_TABS);

/**
 * Makes the tab that leads to all of ours, before the due list: what each answers, and where the page has it. One
 * that can be chosen and is not there is named all the same.
 *
 * None of the others is hidden to make the row of tabs shorter: whether a link of a cell opens a tab that is hidden is
 * said nowhere that was looked in (documentation, public pages and issues), and a link that leads nowhere is worse.
 */
export function makeOverview(workbook: Workbook): void {
  const rows = FACES.flatMap(({ tab, section, group }): TabCell[][] => {
    const sheets = sheetsOf(workbook, tab);
    if (sheets.length === 0 && !CHOSEN.has(tab)) return [];
    const links: TabCell[] =
      sheets.length === 0
        ? [{ text: text.notMade({ tab: OWN_TABS[tab as Own] }) }]
        : sheets.map((sheet) => ({ formula: linkTo(sheet) }));
    return links.map((link) => [
      { text: text.group({ group }) },
      link,
      { text: text.answer({ tab }) },
      { text: SECTION[section]() },
    ]);
  });
  const header = [text.kind(), text.tab(), text.answers(), text.onPage()];
  makeTab(workbook, {
    name: OWN_TABS.overview,
    madeBy: `${OWN_TABS.overview.toLowerCase()}, ${text.made({ at: minuteNow(workbook) })}`,
    rows: [header.map((one) => ({ text: one })), ...rows],
    frozenRows: 2,
    widths: [140, 190, 420, 110],
    formats: {},
    before: dueTabOf(workbook)?.getIndex() ?? null,
  });
}

/** Our tabs of an answer, whatever they are called; none where it has none yet. */
function sheetsOf(workbook: Workbook, tab: Face["tab"]): readonly Sheet[] {
  if (tab === "plan") {
    return gridTabs(workbook).filter(
      (sheet) => sheet.getName().startsWith(`${PLAN_TAB} `) && isPlan(sheet),
    );
  }
  const sheet = tab === "due" ? dueTabOf(workbook) : ownTab(workbook, OWN_TABS[tab]);
  return sheet === null ? [] : [sheet];
}
