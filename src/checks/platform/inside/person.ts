/** Those of the emulator's methods that a person's hands and eyes stand for. */
interface SheetSeen {
  getName(): string;
  getRange(row: number, column: number): CellSeen;
  getDataRange(): { getValues(): unknown[][]; getFormulas(): string[][] };
  getType(): { toString(): string };
}
interface CellSeen {
  setValue(value: unknown): unknown;
}
interface BookSeen {
  getSheets(): SheetSeen[];
  getSheetByName(name: string): SheetSeen | null;
}
declare const SpreadsheetApp: { getActiveSpreadsheet(): BookSeen };
/** The script's own trigger. */
declare const onEdit: (event: object) => void;

function sheet(tab: string): SheetSeen {
  const found = SpreadsheetApp.getActiveSpreadsheet().getSheetByName(tab);
  if (found === null) throw new Error(`there is no tab ${tab}`);
  return found;
}

interface CellAt {
  readonly row: number;
  readonly column: number;
}

/** What a person sees and does in the workbook, through the emulator's own objects. */
export const person = {
  /** Every tab's name and kind. */
  tabs: () =>
    SpreadsheetApp.getActiveSpreadsheet()
      .getSheets()
      .map((one) => ({ name: one.getName(), type: one.getType().toString() })),
  /** A day as the text "day 2026-11-25", so that it is told from text that looks like one. */
  values: (tab: string): unknown[][] =>
    sheet(tab)
      .getDataRange()
      .getValues()
      .map((row) =>
        row.map((value) =>
          value instanceof Date ? `day ${value.toISOString().slice(0, 10)}` : value,
        ),
      ),
  formulas: (tab: string) => sheet(tab).getDataRange().getFormulas(),
  /** Puts a value into a cell; the trigger runs after it. Row and column count from 1. */
  type(tab: string, { row, column }: CellAt, value: string | number | boolean): void {
    const range = sheet(tab).getRange(row, column);
    range.setValue(value);
    const told = typeof value === "boolean" ? String(value).toUpperCase() : String(value);
    const place = { rowStart: row, rowEnd: row, columnStart: column, columnEnd: column };
    onEdit({
      range: Object.assign(range, place),
      value: told,
      source: SpreadsheetApp.getActiveSpreadsheet(),
    });
  },
};
