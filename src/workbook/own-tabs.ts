/** The tabs that the add-in makes. It writes to these, and to cells that a person has confirmed. */
export const OWN_TABS = {
  settings: "Nursery settings",
  timetable: "Nursery timetable",
  due: "Due list",
  stages: "Stages",
  ready: "Ready by month",
  takes: "Takes",
  takesCompared: "Takes compared",
  takesTrend: "Takes by month",
  takeReasons: "What takes go with",
  checks: "Checks",
  workPlan: "Work plan",
  log: "Write log",
} as const;

/**
 * The name of the tab of persons that we make. It is the person's from then on, and many a workbook
 * has a tab of that name of its own, so that it is none of OWN_TABS.
 */
export const CREW_TAB = "Crew";

/** Every tab of ours begins with these words, so that a tab of the person's own is never taken for it. */
export const MARK = "Nursery batches:";

/** Our tab of a name; null when there is none, or a tab of that name is not ours. */
export function ownTab(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
  name: string,
): GoogleAppsScript.Spreadsheet.Sheet | null {
  const sheet = workbook.getSheetByName(name);
  return sheet !== null && isOurs(sheet) ? sheet : null;
}

/** Whether a tab begins as ours do. */
export function isOurs(sheet: GoogleAppsScript.Spreadsheet.Sheet): boolean {
  return String(sheet.getRange(1, 1).getValue()).startsWith(MARK);
}

/** @throws Error when a tab that is the person's own bears the name of one of ours */
export function mustBeFree(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
  names: readonly string[],
): void {
  // A workbook takes "due list" and "Due list" for one name.
  const wanted = new Set(names.map((name) => name.toLowerCase()));
  for (const sheet of workbook.getSheets()) {
    const name = sheet.getName();
    if (wanted.has(name.toLowerCase()) && !isOurs(sheet)) {
      throw new Error(notOursSentence(name));
    }
  }
}

export function notOursSentence(name: string): string {
  return `There is a tab "${name}" that is not the add-in's: rename it, then try again`;
}
