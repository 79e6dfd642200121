import { gridTabs } from "./grid-tabs";
import { isOurs } from "./own-tabs";

/** A tab that is the person's own, read once. */
export interface PersonTab {
  readonly name: string;
  readonly values: readonly (readonly unknown[])[];
}

/** Every tab that is not the add-in's, in the workbook's order. */
export function personTabs(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
): readonly PersonTab[] {
  return gridTabs(workbook)
    .filter((sheet) => !isOurs(sheet))
    .map((sheet) => ({ name: sheet.getName(), values: sheet.getDataRange().getValues() }));
}
