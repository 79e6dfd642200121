import { asOfTab } from "../sentences/made/report";
import { oneCell } from "./references";
import { findSetting } from "./settings-tab";
import { numberCell, type SheetDraft, textCell } from "./workbook-data";

/** A workbook in which one cell holds the day that every formula looks from. */
export interface WithAsOf {
  readonly drafts: readonly SheetDraft[];
  /** Where the day stands, for a formula. */
  readonly reference: string;
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/**
 * Sees to it that the workbook has an as-of day: the day asked for, else the one that the tab
 * Settings names beside "As-of day", else today. Without such a line a tab "As of" is added.
 * @param asked serial day number, undefined when the person asked for none
 * @param today serial day number
 */
export function withAsOf(
  drafts: readonly SheetDraft[],
  asked: number | undefined,
  today: number,
): WithAsOf {
  const setting = findSetting(drafts, "As-of day");
  if (!setting) {
    const sheet = freeName(asOfTab(), drafts);
    const added: SheetDraft = { name: sheet, rows: [[textCell("As-of day"), day(asked ?? today)]] };
    return cellOf([...drafts, added], sheet, 0);
  }
  const { settings, row } = setting;
  const filled = settings.rows[row]?.[1];
  if (asked === undefined && filled) return cellOf(drafts, settings.name, row);
  const rows = settings.rows.map((cells, index) =>
    index === row ? [cells[0], day(asked ?? today), ...cells.slice(2)] : cells,
  );
  const changed = drafts.map((draft) => (draft === settings ? { ...settings, rows } : draft));
  return cellOf(changed, settings.name, row);
}

function cellOf(drafts: readonly SheetDraft[], sheet: string, row: number): WithAsOf {
  return { drafts, reference: oneCell(sheet, row, 1), sheet, row, column: 1 };
}

function day(serial: number) {
  return numberCell(serial, "yyyy-mm-dd");
}

/** A name for a new tab: the one wished for, with a number behind it if a tab has it already. */
export function freeName(wished: string, drafts: readonly { readonly name: string }[]): string {
  const taken = new Set(drafts.map(({ name }) => name.trim().toLowerCase()));
  let name = wished;
  for (let number = 2; taken.has(name.toLowerCase()); number++) name = `${wished} ${number}`;
  return name;
}
