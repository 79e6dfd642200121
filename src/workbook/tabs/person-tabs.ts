import { gridTabs } from "../host/grid-tabs";
import { isOurs } from "./own-tabs";

type Values = readonly (readonly unknown[])[];

/** A tab that is the person's own. What it holds may be nobody's business, such as wages. */
export interface PersonTab {
  readonly name: string;
  /** How many rows hold something. */
  readonly rows: number;
  /** Its first rows, or all where it has fewer. */
  top(rows: number): Values;
  /** All that it holds. */
  all(): Values;
}

/** Every tab that is not the add-in's, in the workbook's order. Nothing of them is read yet. */
export function personTabs(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
): readonly PersonTab[] {
  return gridTabs(workbook)
    .filter((sheet) => !isOurs(sheet))
    .map((sheet): PersonTab => {
      const [rows, columns] = [sheet.getLastRow(), sheet.getLastColumn()];
      const read = new Map<number, Values>();
      const top = (wanted: number): Values => {
        const count = Math.min(wanted, rows);
        if (count === 0 || columns === 0) return [[""]];
        const values = read.get(count) ?? sheet.getRange(1, 1, count, columns).getValues();
        read.set(count, values);
        return values;
      };
      return { name: sheet.getName(), rows, top, all: () => top(rows) };
    });
}

/** A header stands in one of the first ten rows, and may be of two rows. */
export const HEAD_ROWS = 11;
