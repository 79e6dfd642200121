import { isOurs } from "./own-tabs";

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
 */
export function ownSettings(workbook: GoogleAppsScript.Spreadsheet.Spreadsheet): OwnSettings {
  const sheet = workbook
    .getSheets()
    .find((one) => one.getName().trim().toLowerCase() === NAME && !isOurs(one));
  const range = sheet?.getDataRange();
  const values = range?.getValues() ?? [];
  const formulas = range?.getFormulas() ?? [];
  const follow = (label: string, moving = false): string | null => {
    const row = values.findIndex(([name]) => String(name).trim().toLowerCase() === label);
    if (sheet === undefined || row === -1) return null;
    // What a formula makes may not be calculated yet.
    const hasFormula = (formulas[row]?.[1] ?? "") !== "";
    const isFilled = (values[row]?.[1] ?? "") !== "";
    if (!hasFormula && (moving || !isFilled)) return null;
    return `='${sheet.getName().replace(/'/g, "''")}'!$B$${row + 1}`;
  };
  return {
    asOf: follow("as-of day", true),
    level: follow("level"),
    daysAhead: follow("days ahead"),
  };
}
