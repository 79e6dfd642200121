import * as text from "../../sentences/made/controls";

/** Hours to a tenth, six minutes: nobody plans by less. @example hoursText(16.73) // "16.7" */
export function hoursText(hours: number): string {
  const rounded = Math.round(hours * 10) / 10;
  return rounded === 0 && hours > 0 ? text.underTenth() : String(rounded);
}

/** @example hoursCounted(1) // "1 hour" */
export function hoursCounted(hours: number): string {
  const shown = hoursText(hours);
  return text.hours({ hours: shown, form: shown === "1" ? "one" : "many" });
}

/** @example hoursOfHours(6.5, 8) // "6.5 of 8 hours" */
export function hoursOfHours(asked: number, there: number): string {
  return text.hoursOf({ asked: hoursText(asked), hours: hoursCounted(there) });
}
