import { levelArgument, openDoor, wholeNumberArgument } from "../../door/index";
import { workbookHost } from "../host/workbook-host";
import { LABEL } from "./found-settings";
import type { Settings } from "./settings";

/** How many of 1 ranges should hold, as the settings say. @throws InputError for what is no share */
export function levelSet({ level }: Pick<Settings, "level">): number {
  return levelArgument(LABEL.level, openDoor(workbookHost()).cell(level), 0.8);
}

/** How far the due list looks ahead, in days. @throws InputError for what is no whole number */
export function daysAheadSet({ daysAhead }: Pick<Settings, "daysAhead">): number {
  return wholeNumberArgument(LABEL.daysAhead, openDoor(workbookHost()).cell(daysAhead), 7);
}
