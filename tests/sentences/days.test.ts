import { enGB } from "date-fns/locale";
import { expect, it } from "vitest";
import { english } from "../../src/sentences/english";

// Source: the locale en-GB of date-fns, as all names of months that are read.
it("has the short names of months and weekdays that date-fns has", () => {
  const names = (message: string) =>
    [...message.matchAll(/\d+ \{(\w+)\}/g)].map(([, name]) => name);
  const months = ([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11] as const).map((month) =>
    enGB.localize.month(month, { width: "abbreviated" }),
  );
  const weekdays = ([0, 1, 2, 3, 4, 5, 6] as const).map((weekday) =>
    enGB.localize.day(weekday, { width: "abbreviated" }),
  );
  expect(names(english.days.monthName)).toEqual(months);
  expect(names(english.days.weekdayName)).toEqual(weekdays);
});
