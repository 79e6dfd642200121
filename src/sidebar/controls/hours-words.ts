/** Hours without needless decimals. @example hoursText(0.1 + 0.2) // "0.3" */
export function hoursText(hours: number): string {
  return String(Math.round(hours * 100) / 100);
}

/** @example hoursCounted(1) // "1 hour" */
export function hoursCounted(hours: number): string {
  const text = hoursText(hours);
  return `${text} ${text === "1" ? "hour" : "hours"}`;
}

/** @example hoursOfHours(6.5, 8) // "6.5 of 8 hours" */
export function hoursOfHours(asked: number, there: number): string {
  return `${hoursText(asked)} of ${hoursCounted(there)}`;
}
