import { builtInTimetable, isOfTable, LEAVE_ALONE, NO_TAB, shortened, TOLD_AS } from "../../core";
import { openDoor } from "../../door/index";
import * as text from "../../sentences/made/set-up";
import type { ColumnChoice } from "../../wire/columns";
import type { SetUpAnswer, SetUpRequest } from "../../wire/set-up";
import { refreshDueTab } from "../due/due-tab";
import { recordTickedUnderLock } from "../due/ticked-tasks";
import { gridTab } from "../host/grid-tabs";
import { withLock } from "../host/lock";
import { minuteNow } from "../host/minute-now";
import { workbookHost } from "../host/workbook-host";
import { refreshPlans } from "../orders/order-plan-tab";
import { groupHeaders } from "../reading/group-headers";
import { initialsIn } from "../reading/named-text";
import { columnsArgument, readTab, recordsNow } from "../reading/records-tab";
import { timetableOf, timetableValues } from "../reading/timetable-source";
import { ownSettings } from "../settings/own-settings";
import {
  readSettings,
  type Settled,
  settingsTab,
  TOLD_ROWS,
  type ToldRow,
  toldFor,
  toldHeader,
  writeSettings,
} from "../settings/settings";
import { ordersNow, ordersRead } from "../tables/orders-tab";
import { dueTabOf } from "../tabs/due-tab-found";
import { sweepLeftovers } from "../tabs/leftovers";
import { keepingView, makeTab } from "../tabs/make-tab";
import type { MovedNote } from "../tabs/notes-in-the-way";
import { CHOSEN_TABS, isOurs, mustBeFree, OWN_TABS, ownTab } from "../tabs/own-tabs";
import { straightenTimetable, timetableTab } from "../tabs/timetable-tab";
import { logContent } from "../writing/write-log";
import { toldOfTable } from "./beside-guesses";
import { chosenTabs, wantedTabs } from "./chosen-tabs";
import { formulaTabs } from "./formula-tabs";
import { makeOverview } from "./overview-tab";
import { wordsAsked } from "./words-asked";

/**
 * Makes the add-in's tabs; no timetable where the person has chosen a tab of their own for it, which
 * is only read. The timetable and the log, and in the settings all but the records tab and
 * its columns, are made once and are the person's from then on; the others are made anew, those that
 * are there in the same sheet.
 *
 * Everything that may be refused is looked at before anything is made.
 */
export function setUp(request: SetUpRequest): SetUpAnswer {
  return withLock(() => {
    const workbook = SpreadsheetApp.getActiveSpreadsheet();
    const { settings, forgotten } = checked(workbook, request);
    const hadList = dueTabOf(workbook) !== null;
    const answer = keepingView(workbook, () => makeAll(workbook, request, settings));
    // Whoever sets up for the first time sees what it is for; nobody else is taken elsewhere.
    const list = hadList ? null : dueTabOf(workbook);
    if (list !== null) workbook.setActiveSheet(list);
    return { ...answer, forgotten };
  });
}

function makeAll(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
  request: SetUpRequest,
  settings: Settled,
): Omit<SetUpAnswer, "forgotten"> {
  sweepLeftovers(workbook);
  const written = dueTabOf(workbook) === null ? undefined : writeTicksFirst();
  const made: string[] = [];
  const moved: MovedNote[] = [];
  const kept: string[] = [];
  const madeAt = minuteNow(workbook);
  // The log and the timetable first: as soon as there are settings, tasks can be recorded.
  const timetable = settings.timetableTab === null ? [timetableTab(request.methods, madeAt)] : [];
  for (const content of [logContent(), ...timetable]) {
    if (ownTab(workbook, content.name) !== null) kept.push(content.name);
    else {
      makeTab(workbook, content);
      made.push(content.name);
    }
  }
  const there = ownTab(workbook, OWN_TABS.settings);
  if (there === null) {
    makeTab(workbook, settingsTab(settings, ownSettings(workbook), madeAt));
  } else writeSettings(there, settings, madeAt);
  (there === null ? made : kept).push(OWN_TABS.settings);
  straightenTimetable(workbook);
  const now = recordsNow();
  const list = refreshDueTab(now, written);
  made.push(list.name);
  moved.push(...list.moved);
  const chosen = chosenTabs(now, wantedTabs(workbook, request.tabs ?? []));
  for (const content of [...formulaTabs(now), ...chosen]) {
    moved.push(...makeTab(workbook, content));
    made.push(content.name);
  }
  moved.push(...refreshPlans(now));
  makeOverview(workbook);
  made.push(OWN_TABS.overview);
  const orders = ordersRead(ordersNow(now), now);
  const words = wordsAsked({ ...now, orders }, now.timetable, initialsIn(now.records));
  return { made, kept, moved, words };
}

/** Ticks belong to the table that was read till now. Those that can't be written are carried over. */
function writeTicksFirst(): ReadonlySet<string> | undefined {
  try {
    return recordTickedUnderLock().inRecords;
  } catch {
    // Set up is just what helps when the records tab or a column of it is gone.
    return undefined;
  }
}

interface Checked {
  readonly settings: Settled;
  readonly forgotten: readonly ColumnChoice[];
}

/** @throws Error in a sentence when the tabs could not be made as they are asked for */
function checked(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
  request: SetUpRequest,
): Checked {
  const sheet = gridTab(workbook, request.tab);
  if (sheet === null) throw new Error(text.noTab({ tab: shortened(request.tab) }));
  if (isOurs(sheet)) {
    throw new Error(text.oursIsNone({ tab: shortened(request.tab) }));
  }
  const own = request.timetable ?? null;
  const { timetable: ours, due, ...others } = OWN_TABS;
  // Where the due list bears another name, its own is free for the person.
  const isRenamed = ownTab(workbook, due) === null && dueTabOf(workbook) !== null;
  const names = [...(isRenamed ? [] : [due]), ...(own === null ? [ours] : [])];
  // Nobody is kept from a name of their own by a tab that they did not ask for.
  const asked = request.tabs ?? [];
  const unasked = new Set<string>(CHOSEN_TABS.filter((key) => !asked.includes(key)));
  const always = Object.entries(others).flatMap(([key, name]) => (unasked.has(key) ? [] : [name]));
  mustBeFree(workbook, [...always, ...names]);
  const known = new Set(builtInTimetable().methods.map(({ name }) => name));
  const unknown = request.methods.find((method) => !known.has(method));
  if (unknown !== undefined) throw new Error(text.noMethod({ name: shortened(unknown) }));
  const { columns, forgotten } = columnsTold(workbook, sheet, request);
  if (columns.length > TOLD_ROWS) {
    throw new Error(text.tooManyColumns({ most: TOLD_ROWS, found: columns.length }));
  }
  const before = readSettings(workbook);
  const kept = before?.recordsTab === request.tab ? before.compareBy : "";
  const settings: Settled = {
    recordsTab: request.tab,
    timetableTab: own,
    columns,
    compareBy: request.compareBy === "" ? NO_TAB : (request.compareBy ?? kept),
    initials: request.initials ?? before?.initials ?? false,
    looks: request.looks ?? before?.looks ?? true,
  };
  // Read as it will be read, so that a table that can't be is met with before anything is made.
  const { records } = readTab(workbook, {
    sheet,
    settings: {
      ...settings,
      asOf: before?.asOf ?? "",
      level: "",
      daysAhead: "",
    },
  });
  const { compareBy } = request;
  if (compareBy !== undefined && compareBy !== "" && !groupHeaders(records).includes(compareBy)) {
    throw new Error(text.compareOther({ header: shortened(compareBy) }));
  }
  return { settings, forgotten };
}

/** Whether two rows tell what one word in cells means, or the same of the same two. */
function isOfOne([name, word, as]: ToldRow, [other, same, what]: ToldRow): boolean {
  return word === same && as === what && (as === TOLD_AS.value || name === other);
}

/** Whether of the same table a row tells the tab, or the same header. */
function isToldAnew([name, word, as]: ToldRow, [other, same, what]: ToldRow): boolean {
  if (as !== what) return false;
  if (as === TOLD_AS.tab) return name === other;
  return isOfTable(name) && tableIn(name) === tableIn(other) && word === same;
}

const tableIn = (name: string) => name.slice(0, name.indexOf(":"));

/** What was told before and still can be followed, with what is told now. */
function columnsTold(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
  sheet: GoogleAppsScript.Spreadsheet.Sheet,
  request: SetUpRequest,
): Pick<Settled, "columns"> & Pick<Checked, "forgotten"> {
  const before = toldFor(readSettings(workbook), request.tab);
  const now = request.columns.map(toldHeader);
  const changed = new Set(request.columns.map(({ header }) => header));
  const isHeaderIn = (headers: ReadonlySet<string>, [name, word, as]: ToldRow) =>
    as === TOLD_AS.header && headers.has(word) && !isOfTable(name);
  const ofTables = (request.tables ?? []).flatMap(toldOfTable);
  const words = (request.words ?? []).map(
    ({ word, name, notSame }): ToldRow => [
      name ?? LEAVE_ALONE,
      word,
      notSame ? TOLD_AS.notSame : TOLD_AS.value,
    ],
  );
  const isAnswered = (row: ToldRow) => words.some((one) => isOfOne(one, row));
  const columns = [
    ...before.filter(
      (row) =>
        !isHeaderIn(changed, row) &&
        !isAnswered(row) &&
        !ofTables.some((one) => isToldAnew(row, one)),
    ),
    ...now,
    ...ofTables,
    ...words,
  ];
  const door = openDoor(workbookHost());
  const own = request.timetable ?? null;
  const timetable = timetableOf(door, timetableValues(workbook, own), own);
  const lost = door.lostColumns(sheet.getDataRange().getValues(), {
    timetable,
    columns: columnsArgument(columns),
  });
  const asked = lost.find(({ header }) => changed.has(header));
  if (asked !== undefined) {
    throw new Error(
      asked.why === "header"
        ? text.headerGone({ header: shortened(asked.header) })
        : text.chooseOther({ name: shortened(asked.name) }),
    );
  }
  const gone = new Set(lost.map(({ header }) => header));
  return {
    columns: columns.filter((row) => !isHeaderIn(gone, row)),
    forgotten: lost.map(({ name, header }) => ({
      header,
      readAs: name === LEAVE_ALONE ? null : name,
    })),
  };
}
