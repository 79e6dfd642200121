import { oneCell } from "./references";
import type { SheetDraft } from "./workbook-data";

/** A line of the tab Settings: a label in column A, its value in column B. */
interface Setting {
  readonly settings: SheetDraft;
  /** Counted from 0. */
  readonly row: number;
}

/** The line of the tab Settings with this label, or null when there is none. */
export function findSetting(drafts: readonly SheetDraft[], label: string): Setting | null {
  const settings = drafts.find(({ name }) => name.trim().toLowerCase() === "settings");
  const row = settings?.rows.findIndex(
    ([cell]) =>
      String(cell?.v ?? "")
        .trim()
        .toLowerCase() === label.toLowerCase(),
  );
  return settings === undefined || row === undefined || row < 0 ? null : { settings, row };
}

/** The cell with the value of a setting, as a formula names it; null when it is not filled in. */
export function settingReference(drafts: readonly SheetDraft[], label: string): string | null {
  const found = findSetting(drafts, label);
  const value = found?.settings.rows[found.row]?.[1];
  return found && value ? oneCell(found.settings.name, found.row, 1) : null;
}
