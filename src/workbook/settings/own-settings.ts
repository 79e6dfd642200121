import { InputError } from "../../core";
import { levelArgument, openDoor, wholeNumberArgument } from "../../door/index";
import { sameAs } from "../host/formula-text";
import { gridTabs } from "../host/grid-tabs";
import { workbookHost } from "../host/workbook-host";
import { isOurs } from "../tabs/own-tabs";
import { LABEL } from "./found-settings";

/** Formulas that follow what the person has set in a tab of their own; null where they have not. */
export interface OwnSettings {
  readonly asOf: string | null;
  readonly level: string | null;
  readonly daysAhead: string | null;
}

/** The person's tab: labels in its first column, values in the second. */
const NAME = "settings";

/**
 * What a tab Settings of the person's own says, for our settings to follow. A day that is typed there
 * is left alone: it stands still, and every answer with it. A day that a formula makes moves on.
 * What can't be read as such a setting is one of something else, and left alone too.
 */
export function ownSettings(workbook: GoogleAppsScript.Spreadsheet.Spreadsheet): OwnSettings {
  const sheet = gridTabs(workbook).find(
    (one) => one.getName().trim().toLowerCase() === NAME && !isOurs(one),
  );
  const range = sheet?.getDataRange();
  const values = range?.getValues() ?? [];
  const formulas = range?.getFormulas() ?? [];
  const door = openDoor(workbookHost());
  const follow = (
    name: string,
    read: (value: unknown) => unknown,
    moving = false,
  ): string | null => {
    const row = values.findIndex(
      ([label]) => String(label).trim().toLowerCase() === name.toLowerCase(),
    );
    if (sheet === undefined || row === -1) return null;
    const value: unknown = values[row]?.[1] ?? "";
    // What a formula makes may not be calculated yet.
    const hasFormula = (formulas[row]?.[1] ?? "") !== "";
    if (!hasFormula && (moving || value === "")) return null;
    if (value !== "" && !isReadable(() => read(value))) return null;
    return sameAs(sheet.getName(), `$B$${row + 1}`);
  };
  return {
    asOf: follow(LABEL.asOf, (value) => door.day(LABEL.asOf, value), true),
    level: follow(LABEL.level, (value) => levelArgument(LABEL.level, door.cell(value), 0)),
    daysAhead: follow(LABEL.daysAhead, (value) =>
      wholeNumberArgument(LABEL.daysAhead, door.cell(value), 0),
    ),
  };
}

/** Whether it can be read, or could be once it is calculated. */
function isReadable(read: () => unknown): boolean {
  try {
    read();
    return true;
  } catch (error) {
    return error instanceof InputError && error.code === "not-ready-yet";
  }
}
