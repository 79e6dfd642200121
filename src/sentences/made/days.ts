// Made by npm run sentences from the files of sentences; a test holds it equal.

export const day = (d: { readonly day: string | number; readonly month: string | number; readonly year: string | number }): string =>
  d.day + " " + d.month + " " + d.year;

export const dayMonth = (d: { readonly day: string | number; readonly month: string | number }): string =>
  d.day + " " + d.month;

export const month = (d: { readonly month: string | number; readonly year: string | number }): string =>
  d.month + " " + d.year;

export const months = (): string =>
  "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec";

export const weekdayDay = (d: { readonly weekday: string | number; readonly day: string | number; readonly month: string | number }): string =>
  d.weekday + " " + d.day + " " + d.month;

export const weekdays = (): string =>
  "Sun Mon Tue Wed Thu Fri Sat";

export const window = (d: { readonly from: string | number; readonly by: string | number }): string =>
  d.from + " – " + d.by;
