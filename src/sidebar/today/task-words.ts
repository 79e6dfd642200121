import type { DueTask } from "../../workbook/sidebar-calls";
import { counted, countText } from "../controls/count-words";

/** @example statusWords(task) // "Late by 9 days" */
export function statusWords({ status, daysLate }: DueTask): string {
  if (status === "late") return `Late by ${counted(daysLate, "day", "days")}`;
  return status === "due" ? "Due" : "Coming";
}

/** "Plants not counted" where nobody counted them: that is not none. */
export function plantsWords({ plants }: DueTask): string {
  return plants === null ? "plants not counted" : counted(plants, "plant", "plants");
}

/** Null where not known. @example hoursWords(task) // "1.3 hours of one person" */
export function hoursWords({ hours }: DueTask): string | null {
  if (hours === null) return null;
  if (hours < 0.1) return "a few minutes of one person";
  const rounded = Math.round(hours * 10) / 10;
  const number = rounded >= 100 ? countText(rounded) : String(rounded);
  return `${number} ${rounded === 1 ? "hour" : "hours"} of one person`;
}
