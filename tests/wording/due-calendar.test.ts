import fc from "fast-check";
import ICAL from "ical.js";
import { describe, expect, it } from "vitest";
import type { CivilDay } from "../../src/core";
import type { Task } from "../../src/core/due/due-tasks";
import { builtInTimetable } from "../../src/core/timetable/read-timetable";
import type { Step } from "../../src/core/timetable/timetable";
import * as text from "../../src/sentences/made/due-calendar";
import { dayWords } from "../../src/wording/days";
import { dueCalendar } from "../../src/wording/due-calendar";
import { recordsRemarks } from "../../src/wording/records";
import { day, iso } from "../support/days";
import { nastyText } from "../support/nasty-cells";

const AS_OF = day("2026-11-25");
const RELEASE = builtInTimetable().methods[0]?.steps.find(
  ({ name }) => name === "First release",
) as Step;

function task(more: Partial<Task> = {}): Task {
  return {
    ...{ batch: "B-1", variety: "", place: "Bay 2", step: RELEASE, method: "", status: "coming" },
    ...{ plants: 120, passing: 120, way: null, isEstimate: false },
    ...{ doOn: day("2026-12-03"), from: day("2026-12-01"), by: day("2026-12-07") },
    ...{ daysLate: 0, hours: null },
    ...more,
  };
}

const calendarOf = (rows: readonly Task[], asOf: CivilDay) =>
  dueCalendar({ rows, remarks: [] }, asOf);

/** The entries of a calendar file, read by another author's reader of RFC 5545. */
function entriesOf(text: string) {
  const calendar = new ICAL.Component(ICAL.parse(text));
  return calendar.getAllSubcomponents("vevent").map((one) => {
    const event = new ICAL.Event(one);
    const all = (name: string) => one.getAllProperties(name).length;
    expect(["uid", "dtstamp", "dtstart", "dtend", "summary"].map(all)).toEqual([1, 1, 1, 1, 1]);
    expect([event.startDate.isDate, event.endDate.isDate]).toEqual([true, true]);
    return {
      uid: event.uid,
      stamp: String(one.getFirstPropertyValue("dtstamp")),
      start: event.startDate.toString(),
      end: event.endDate.toString(),
      summary: event.summary,
      location: event.location,
      description: event.description,
    };
  });
}

/** The lines of the file as they stand, their lengths in octets. */
function octetsOf(text: string): number[] {
  expect(text.endsWith("\r\n")).toBe(true);
  expect(text.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
  return text
    .slice(0, -2)
    .split("\r\n")
    .map((line) => new TextEncoder().encode(line).length);
}

/** Text as it may stand in a calendar: control characters as spaces, half characters marked. */
function asWritten(text: string): string {
  return Array.from(text, (character) => {
    const code = character.codePointAt(0) as number;
    if ((code < 32 && character !== "\n") || code === 127) return " ";
    return code >= 0xd800 && code <= 0xdfff ? "\ufffd" : character;
  }).join("");
}

const summaryOf = (batch: string) =>
  text.summaryPlants({ task: "First release", batch, plants: 120 });
const WINDOW = text.window({
  from: dayWords(day("2026-12-01")),
  by: dayWords(day("2026-12-07")),
  usual: dayWords(day("2026-12-03")),
});

describe("the due list as a calendar file", () => {
  it("has an all-day entry for each task, from the day to start to the day after the last", () => {
    expect(entriesOf(calendarOf([task()], AS_OF))).toEqual([
      {
        uid: "B-1-first%20release@nursery-batches",
        stamp: "2026-11-25T00:00:00Z",
        start: "2026-12-01",
        end: "2026-12-08",
        summary: summaryOf("B-1"),
        location: "Bay 2",
        description: `${WINDOW}\n${RELEASE.caution}`,
      },
    ]);
    expect(RELEASE.caution).not.toBe("");
  });

  it("starts today what should have been started, and says what is late", () => {
    const late = task({
      ...{ from: day("2026-11-01"), by: day("2026-11-07"), doOn: AS_OF },
      ...{ status: "late", daysLate: 18 },
    });
    const [entry] = entriesOf(calendarOf([late], AS_OF));
    expect(entry).toMatchObject({ start: "2026-11-25", end: "2026-11-26" });
    expect(entry?.description).toContain(`\n${text.daysLate({ days: 18 })}\n`);
    const due = task({ from: day("2026-11-20"), by: day("2026-11-28") });
    expect(entriesOf(calendarOf([due], AS_OF))[0]).toMatchObject({
      ...{ start: "2026-11-25", end: "2026-11-29" },
    });
  });

  it("leaves out the plants and the place where they are not known", () => {
    const bare = task({ plants: null, place: "", step: { ...RELEASE, caution: "" } });
    const [entry] = entriesOf(calendarOf([bare], AS_OF));
    expect(entry).toMatchObject({
      summary: text.summary({ task: "First release", batch: "B-1" }),
      location: null,
    });
    expect(entry?.description).toBe(WINDOW);
  });

  it("is a calendar without entries where nothing is due", () => {
    const calendar = new ICAL.Component(ICAL.parse(calendarOf([], AS_OF)));
    expect(calendar.name).toBe("vcalendar");
    expect(calendar.getFirstPropertyValue("version")).toBe("2.0");
    expect(calendar.getFirstPropertyValue("prodid")).not.toBe("");
    expect(calendar.getAllSubcomponents()).toEqual([]);
  });

  // A calendar held no task of a batch whose method was not known, and said nothing of it.
  it("names what is left out of it, on the day of the file", () => {
    const remarks = [{ code: "no-such-method", batches: ["B-7", "B-9"] } as const];
    const entries = entriesOf(dueCalendar({ rows: [task()], remarks }, AS_OF));
    expect(entries).toHaveLength(2);
    expect(entries[1]).toMatchObject({
      ...{ start: "2026-11-25", end: "2026-11-26", location: null },
      ...{ summary: text.leftOut(), description: recordsRemarks(remarks, "page") },
    });
  });

  it("names a task the same in every file, and two tasks never alike", () => {
    const others = [task(), task({ batch: "B-2" }), task({ step: { ...RELEASE, key: "ready" } })];
    const today = entriesOf(calendarOf(others, AS_OF)).map(({ uid }) => uid);
    const tomorrow = entriesOf(calendarOf([...others].reverse(), day("2026-11-26"))).map(
      ({ uid }) => uid,
    );
    expect(new Set(today).size).toBe(3);
    expect(new Set(tomorrow)).toEqual(new Set(today));
  });

  it("keeps order and days across the turn of a year and a leap day", () => {
    const tasks = ["2027-12-31", "2028-02-29"].map((text, at) =>
      task({ batch: `B-${at}`, from: day(text), by: day(text), doOn: day(text) }),
    );
    expect(entriesOf(calendarOf(tasks, AS_OF)).map(({ start, end }) => [start, end])).toEqual([
      ["2027-12-31", "2028-01-01"],
      ["2028-02-29", "2028-03-01"],
    ]);
  });
});

describe("text in a calendar file", () => {
  it.each([
    'a;b,c\\d\\n e: f="g"',
    "line one\nline two",
    "  spaces kept  ",
    "END:VEVENT\nBEGIN:VALARM",
    "=1+1 <b>x</b>",
    "🌱".repeat(40),
    "é".repeat(60),
    "日本語の名前".repeat(20),
    "x".repeat(500),
  ])("comes back as it was: %j", (written) => {
    const file = calendarOf([task({ batch: written, place: written })], AS_OF);
    expect(Math.max(...octetsOf(file))).toBeLessThanOrEqual(75);
    const [entry, ...more] = entriesOf(file);
    expect(more).toEqual([]);
    expect(entry).toMatchObject({
      summary: summaryOf(written),
      location: written,
    });
  });

  it("is cut where it is endless, never inside a character", () => {
    const file = calendarOf([task({ place: "🌱".repeat(5000) })], AS_OF);
    expect(file).not.toContain("\ufffd\ufffd");
    const [entry] = entriesOf(file);
    expect(entry?.location.length).toBeLessThan(2100);
    expect(entry?.location.startsWith("🌱🌱")).toBe(true);
  });

  it("drops control characters and half characters, and nothing else", () => {
    const [entry] = entriesOf(calendarOf([task({ place: "a\u0000b\u001bc\ud800d\te" })], AS_OF));
    expect(entry?.location).toBe("a b c\ufffdd e");
  });

  it("of any kind makes a file that is read back entry by entry", () => {
    const days = fc.integer({ min: 20_000, max: 21_000 });
    const anyTask = fc
      .record({
        batch: nastyText,
        place: nastyText,
        caution: nastyText,
        from: days,
        span: fc.nat(90),
      })
      .map(({ batch, place, caution, from, span }) =>
        task({
          ...{ batch, place, step: { ...RELEASE, caution } },
          ...{ from: from as Task["from"], by: (from + span) as Task["by"] },
        }),
      );
    fc.assert(
      fc.property(fc.array(anyTask, { maxLength: 5 }), (tasks) => {
        const file = calendarOf(tasks, AS_OF);
        expect(Math.max(...octetsOf(file))).toBeLessThanOrEqual(75);
        const entries = entriesOf(file);
        expect(entries).toHaveLength(tasks.length);
        tasks.forEach(({ batch, by }, at) => {
          expect(entries[at]?.summary).toBe(asWritten(summaryOf(batch)));
          expect(entries[at]?.end).toBe(iso(Math.max(by, AS_OF) + 1));
        });
      }),
      { numRuns: 200 },
    );
  });
});
