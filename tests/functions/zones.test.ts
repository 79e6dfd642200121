import vm from "node:vm";
import { describe, expect, it } from "vitest";
import { ask, askRows } from "../support/ask";
import { day, iso } from "../support/days";
import { dateCell, hostIn, wallTime } from "../support/host";

/** Days about changes of the clocks in one zone or another, by the sheet's zone. */
const CASES = [
  ["Etc/UTC", "2026-03-14"],
  ["Europe/London", "2026-03-29"],
  ["America/New_York", "2026-03-08"],
  ["America/New_York", "2026-11-01"],
  ["Asia/Kolkata", "2026-03-14"],
  ["Pacific/Auckland", "2026-04-05"],
  ["Pacific/Auckland", "2026-09-27"],
  ["Pacific/Apia", "2026-01-01"],
  ["Pacific/Kiritimati", "2026-12-31"],
  ["America/Sao_Paulo", "2018-11-04"],
] as const;

const NAMES = ["BATCH_STAGES", "BATCH_STEPS", "BATCH_DUE", "BATCH_CHECK"];

/** What an answer shows in a zone: dates as the sheet's wall shows them, with the time of day. */
function shown(rows: readonly (readonly unknown[])[], zone: string): unknown[][] {
  return rows.map((row) =>
    row.map((cell) => (cell instanceof Date ? wallTime(zone, cell.getTime()) : cell)),
  );
}

function records(date: (isoDay: string) => unknown, grafted: string) {
  const text = (days: number) => iso(day(grafted) + days) as string;
  return [
    ["Batch", "Grafted on", "Grafts made", "First release"],
    ["B1", date(grafted), 100, date(text(14))],
    ["B2", date(text(1)), 50, ""],
    ["B3", date(text(40)), "", ""],
  ];
}

describe.each(CASES)("date cells of a sheet in %s about %s", (zone, grafted) => {
  const asOf = iso(day(grafted) + 20) as string;
  const host = hostIn(zone);

  it.each(NAMES)("give %s the same answer as typed dates", (name) => {
    const args = (date: (isoDay: string) => unknown) => [records(date, grafted), "", date(asOf)];
    const typed = shown(
      askRows(
        name,
        args((text) => text),
        host,
      ),
      zone,
    );
    const cells = shown(
      askRows(
        name,
        args((text) => dateCell(zone, text)),
        host,
      ),
      zone,
    );
    expect(cells).toEqual(typed);
    expect(typed.length).toBeGreaterThan(1);
    // Every day that comes out stands at midnight on the sheet's wall, save where there was none.
    const times = typed.flat().filter((cell) => /^\d{4}-\d\d-\d\d \d\d:/.test(String(cell)));
    for (const time of times) expect(time).toMatch(/ 00:00:00$|^2018-11-04 01:00:00$/);
  });

  it("go round: the recorded day comes out as it went in", () => {
    const rows = askRows(
      "BATCH_STEPS",
      [records((text) => dateCell(zone, text), grafted), "", dateCell(zone, asOf)],
      host,
    );
    const recorded = rows.find((row) => row[0] === "B1" && row[1] === "Grafting")?.[2];
    expect(recorded).toEqual(dateCell(zone, grafted));
  });

  it("keep their day at any hour", () => {
    const at = (hour: number) => (text: string) =>
      new Date(dateCell(zone, text).getTime() + hour * 3_600_000);
    const morning = askRows("BATCH_DUE", [records(at(0), grafted), "", at(0)(asOf)], host);
    for (const hour of [6, 12, 21]) {
      expect(askRows("BATCH_DUE", [records(at(hour), grafted), "", at(hour)(asOf)], host)).toEqual(
        morning,
      );
    }
  });
});

describe("dates of another realm", () => {
  it("answer alike, as a spreadsheet's script hands them over", () => {
    const host = hostIn("America/New_York");
    const own = records((text) => dateCell("America/New_York", text), "2026-03-08");
    const realm = vm.createContext({ own });
    const foreign = vm.runInContext(
      "own.map((row) => Array.from(row, (cell) => typeof cell === 'object' ? new Date(cell.getTime()) : cell))",
      realm,
    );
    expect(foreign[1][1] instanceof Date).toBe(false);
    for (const name of NAMES) {
      expect(ask(name, [foreign, "", "2026-03-28"], host)).toEqual(
        ask(name, [own, "", "2026-03-28"], host),
      );
    }
  });
});
