import {
  type Answer,
  balances,
  type CivilDay,
  costsSoFar,
  isoDay,
  lookback,
  placeLoads,
  readSamples,
  seedBatches,
  workNeeds,
} from "../../core";
import { answer, noGermination, noPlaces } from "../../sentences/made/overview";
import type { FaceAnswer, FaceName, FaceRequest, FacesCalls, IndexRow } from "../../wire/faces";
import { balanceTable, lookbackTable } from "../../wording/batch-tables";
import { costTable } from "../../wording/cost-tables";
import { seedTable } from "../../wording/germination-table";
import { placeTable } from "../../wording/place-tables";
import { needsTable } from "../../wording/work-tables";
import { germinationTab, placesTab, pricesNow, tabsBeside } from "../reading/beside-tabs";
import { type RecordsNow, recordsNow } from "../reading/records-tab";
import { DAYS_LOOKED_BACK, DAYS_NEEDED } from "../set-up/chosen-tabs";
import { FACES } from "../set-up/overview-tab";
import { levelSet } from "../settings/numbers-set";
import { dueTabOf } from "../tabs/due-tab-found";
import { OWN_TABS, PLAN_TAB } from "../tabs/own-tabs";
import type { AnswerersOf } from "./answerer";

const FACE: Readonly<Record<FaceName, (now: RecordsNow) => Answer>> = {
  places: (now) => {
    const sheet = placesTab(now.door, tabsBeside(now));
    if (sheet === null) return { columns: [], rows: [], remark: noPlaces() };
    const places = now.door.places(sheet.getDataRange().getValues(), now.records.words);
    return placeTable(placeLoads({ ...now, places }));
  },
  needs: (now) =>
    needsTable(workNeeds({ ...now, daysAhead: DAYS_NEEDED, withoutLooks: !now.settings.looks })),
  costs: (now) => costTable(costsSoFar({ ...now, prices: pricesNow(now) })),
  germination: ({ door, ...now }) => {
    const sheet = germinationTab(door, tabsBeside({ door, ...now }));
    if (sheet === null) return { columns: [], rows: [], remark: noGermination() };
    const grid = door.beside("germination", sheet.getDataRange().getValues());
    return seedTable(seedBatches(readSamples(grid, door.habits())));
  },
  balance: ({ records, timetable }) => balanceTable(balances(records, timetable)),
  lookback: (now) =>
    lookbackTable(
      lookback({ ...now, daysBefore: DAYS_LOOKED_BACK, level: levelSet(now.settings) }),
    ),
};

/** One of the answers that are tables, as its tab has it. */
export function faceAnswer({ face }: FaceRequest): FaceAnswer {
  const { columns, rows, remark } = FACE[face](recordsNow());
  return {
    columns,
    rows: rows.map((row) =>
      row.map((value, at) =>
        typeof value === "number" && columns[at]?.kind === "day"
          ? isoDay(value as CivilDay)
          : typeof value === "boolean"
            ? String(value)
            : value,
      ),
    ),
    remark,
  };
}

/** Every answer, with what it answers and where it stands on the page and among the tabs. */
export function indexAnswer(): readonly IndexRow[] {
  // The one that people may call otherwise.
  const due = dueTabOf(SpreadsheetApp.getActiveSpreadsheet())?.getName() ?? OWN_TABS.due;
  return FACES.map(({ tab, section }) => ({
    part: tab,
    section,
    tab: tab === "plan" ? PLAN_TAB : tab === "due" ? due : OWN_TABS[tab],
    answers: answer({ tab }),
  }));
}

export const facesCalls: AnswerersOf<FacesCalls> = {
  sidebarFace: {
    // What is no face is the first, so that nothing of the page's can lead elsewhere.
    asked: {
      face: (sent) => (Object.keys(FACE) as FaceName[]).find((one) => one === sent) ?? "places",
    },
    answer: faceAnswer,
  },
  sidebarIndex: { asked: null, answer: indexAnswer },
};
