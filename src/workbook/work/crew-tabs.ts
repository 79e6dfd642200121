import { CREW_HEADER, crewColumns, isClosedDays, tabNames } from "../../core";
import { type Door, openDoor } from "../../door/index";
import * as own from "../../sentences/made/own-tabs";
import * as text from "../../sentences/made/small-tables";
import { workbookHost } from "../host/workbook-host";
import { columnsArgument } from "../reading/records-tab";
import { readSettings } from "../settings/settings";
import { otherTabs, tableTab, toldSheet } from "../tabs/find-tab";
import { CREW_TAB } from "../tabs/own-tabs";
import { DAY_FORMAT } from "../tabs/tab-content";
import { makeTabToFill } from "../tabs/tab-to-fill";

type Workbook = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

export interface CrewTabs {
  readonly crew: Sheet | null;
  readonly closed: Sheet | null;
}

/**
 * Finds the tab with the persons and the one with the closed days. Persons are looked for in a tab
 * called so, else in the one with most of the columns.
 *
 * @param recordsTab is never taken for either
 */
export function crewTabs(workbook: Workbook, door: Door, recordsTab: string): CrewTabs {
  const tabs = otherTabs(workbook, recordsTab);
  const named = (names: readonly string[]) => tabs.filter(({ name }) => names.includes(name));
  // Closed days are known by the name as well: a header "Day" stands in many other tabs. Of a name
  // that others have too, such as a list of who is on leave, the header decides.
  const perhaps = tabNames("perhapsClosedDays");
  const toldClosed = toldSheet(tabs, door, "closed-days");
  const closed =
    toldClosed === undefined
      ? (named(tabNames("closedDays"))[0]?.sheet ??
        tableTab(named(perhaps), perhaps, (head) =>
          isClosedDays(door.beside("closed-days", head)) ? 1 : 0,
        ))
      : toldClosed;
  const toldCrew = toldSheet(tabs, door, "crew");
  if (toldCrew !== undefined) return { closed, crew: toldCrew };
  const others = tabs.filter(({ sheet }) => sheet !== closed);
  return {
    closed,
    crew: tableTab(others, tabNames("crew"), (head, isCalledSo) =>
      crewColumns(door.beside("crew", head), isCalledSo),
    ),
  };
}

/** Makes an empty tab of persons; where there is one already, it is shown. */
export function makeCrewTab(): { tab: string } {
  const [, tasks, , days, from, to] = CREW_HEADER;
  return makeTabToFill(
    {
      name: CREW_TAB,
      header: CREW_HEADER,
      what: text.crew(),
      how: own.howCrew({ tasks, days, from, to }),
      widths: [130, 260, 90, 120, 90, 90],
      formats: { 4: DAY_FORMAT, 5: DAY_FORMAT },
    },
    (workbook) => {
      const settings = readSettings(workbook);
      const door = openDoor(workbookHost(), columnsArgument(settings?.columns ?? []));
      return crewTabs(workbook, door, settings?.recordsTab ?? "").crew;
    },
  );
}
