import { builtInTimetable, isoDay, TOLD_AS } from "../../core";
import { openDoor } from "../../door/index";
import { answer } from "../../sentences/made/overview";
import type { OpenAnswer, OpenCalls } from "../../wire/open";
import { workbookHost } from "../host/workbook-host";
import { asOfDay } from "../reading/records-tab";
import { timetableCandidates, timetableToGuessBy } from "../reading/timetable-source";
import { blockedSentences } from "../set-up/blocked-tabs";
import { recordTabCandidates } from "../set-up/tab-candidates";
import { daysAheadSet, levelSet } from "../settings/numbers-set";
import { readSettings } from "../settings/settings";
import { CHOSEN_TABS, OWN_TABS, ownTab } from "../tabs/own-tabs";
import { personTabs } from "../tabs/person-tabs";
import type { AnswerersOf } from "./answerer";

/** What the page is told when it opens, before anything is set up too. */
export function openAnswer(): OpenAnswer {
  const workbook = SpreadsheetApp.getActiveSpreadsheet();
  const settings = readSettings(workbook);
  const zones = {
    workbook: workbook.getSpreadsheetTimeZone(),
    script: Session.getScriptTimeZone(),
  };
  const tabs = personTabs(workbook);
  const timetables = timetableCandidates(tabs);
  const usable = timetables.find(({ methods }) => methods.length > 0)?.tab ?? null;
  const guessBy = settings === null ? usable : settings.timetableTab;
  // A tab that was told to hold another table holds no records.
  const beside = new Set(
    settings?.columns.filter(([, , as]) => as === TOLD_AS.tab).map(([, word]) => word),
  );
  return {
    workbook: workbook.getName(),
    zones: zones.workbook === zones.script ? null : zones,
    inTheWay: settings === null ? [] : blockedSentences(workbook),
    setUp:
      settings === null
        ? null
        : {
            recordsTab: settings.recordsTab,
            timetableTab: settings.timetableTab,
            asOf: isoDay(asOfDay(openDoor(workbookHost()), settings.asOf)),
            level: levelSet(settings),
            daysAhead: daysAheadSet(settings),
            initials: settings.initials,
            looks: settings.looks,
          },
    candidates: recordTabCandidates(
      tabs.filter(({ name }) => !beside.has(name)),
      timetableToGuessBy(workbook, guessBy),
    ),
    timetables,
    methods: builtInTimetable().methods.map(({ name }) => name),
    moreTabs: CHOSEN_TABS.map((key) => ({
      key,
      tab: OWN_TABS[key],
      answers: answer({ tab: key }),
      isThere: ownTab(workbook, OWN_TABS[key]) !== null,
    })),
  };
}

export const openCalls: AnswerersOf<OpenCalls> = {
  sidebarOpen: { asked: null, answer: openAnswer },
};
