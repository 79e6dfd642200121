import * as text from "../../sentences/made/today-page";
import type { DueTask } from "../../wire/today";
import { countText } from "../controls/count-words";

/** How a task stands. @example statusWords({ status: "late", daysLate: 9 }) // "Late by 9 days" */
export function statusWords({ status, daysLate }: DueTask): string {
  if (status === "late") return text.lateBy({ days: daysLate });
  return status === "due" ? text.due() : text.coming();
}

/** That they are not counted where nobody counted them: that is not none. */
export function plantsWords({ plants, isEstimate }: DueTask): string {
  if (plants === null) return text.plantsNotCounted();
  return isEstimate ? text.plantsAbout({ plants }) : text.plants({ plants });
}

/** Null where not known. @example hoursWords({ hours: 1.3 }) // "1.3 hours of one person" */
export function hoursWords({ hours }: DueTask): string | null {
  if (hours === null) return null;
  if (hours < 0.1) return text.minutes();
  const rounded = Math.round(hours * 10) / 10;
  const number = rounded >= 100 ? countText(rounded) : String(rounded);
  return text.hours({ number, rounded });
}
