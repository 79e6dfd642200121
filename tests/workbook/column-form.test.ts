import { describe, expect, it } from "vitest";
import { civilDay } from "../../src/core";
import * as ownTabs from "../../src/sentences/made/own-tabs";
import { MARK } from "../../src/workbook/host/mark";
import { countLike, dayLike } from "../../src/workbook/writing/column-form";
import { openNursery, SMALL_HEADER, smallRecords, smallRow, tab, takesOf } from "./nursery";

const day = (year: number, month: number, of: number) => {
  const found = civilDay(year, month, of);
  if (found === null) throw new Error("no such day");
  return found;
};
const WANTED = day(2026, 11, 5);

describe("a day among texts", () => {
  it.each([
    [["2026-10-24", "2026-09-03"], "2026-11-05"],
    [["24/10/2026", "03/09/2026"], "05/11/2026"],
    [["10/24/2026", "09/03/2026"], "11/05/2026"],
    [["24.10.26", "3.9.26"], "5.11.26"],
    [["24 Oct 2026", "3 Sep 2026"], "5 Nov 2026"],
    [["24-OCT-2026", "03-SEP-2026"], "05-NOV-2026"],
    [["October 24, 2026", "September 3, 2026"], "November 5, 2026"],
  ])("%j is written as they are", ([one = "", other = ""], text) => {
    const samples = [
      { row: 2, value: one, read: day(2026, 10, 24) },
      { row: 3, value: other, read: day(2026, 9, 3) },
    ];
    expect(dayLike(samples, 4, WANTED)).toBe(text);
  });

  it("is a day where most of the others are, and where the parts can't be told apart", () => {
    const read = day(2026, 10, 24);
    const dates = [2, 3].map((row) => ({ row, value: new Date(), read }));
    expect(dayLike([...dates, { row: 4, value: "2026-10-24", read }], 5, WANTED)).toBeNull();
    expect(
      dayLike([{ row: 2, value: "11/11/2026", read: day(2026, 11, 11) }], 3, WANTED),
    ).toBeNull();
    expect(dayLike([{ row: 2, value: "fin octubre", read }], 3, WANTED)).toBeNull();
    expect(dayLike([], 3, WANTED)).toBeNull();
  });
});

it("a count among texts of digits is one, and a number among numbers", () => {
  expect(countLike([{ row: 2, value: "60", read: 60 }], 3, 55)).toBe("55");
  expect(countLike([{ row: 2, value: 60, read: 60 }], 3, 55)).toBe(55);
  expect(countLike([{ row: 2, value: "~60", read: 60 }], 3, 55)).toBe(55);
});

// People saw 25/11/2026 among 2026-11-20: the sheet shows a day in its own way.
it("a task is recorded in the form of its columns, and taken back", () => {
  const text = (value: string) => ({ v: value, t: 1 });
  const batch = (name: string, more: Parameters<typeof smallRow>[0]) =>
    smallRow({
      ...{ Batch: name, Sown: text("2026-07-20"), "Seeds sown": text("100") },
      ...{ "Germination day": text("2026-07-30"), Germinated: text("90") },
      ...{ "Grafted on": text("2026-10-24"), "Grafts made": text("80"), ...more },
    });
  const nursery = openNursery([
    tab("Records", [
      SMALL_HEADER,
      batch("B1", {}),
      batch("B2", { "Take count day": text("2026-11-20"), Takes: text("61") }),
    ]),
  ]).ready();
  const before = nursery.snapshot("Records");
  const { logId } = nursery.ask("sidebarRecord", takesOf("B1"));
  expect(nursery.sheet("Records").getRange("L2:M2").getValues()).toEqual([["2026-11-24", "60"]]);
  expect(nursery.fault("sidebarRecord", takesOf("B1")).code).toBe("thereAlready");
  nursery.ask("sidebarTakeBack", { logId: logId ?? "" });
  expect(nursery.snapshot("Records")).toBe(before);
});

it("a line of a log is written in the form of the lines above", () => {
  const text = (value: string) => ({ v: value, t: 1 });
  const nursery = openNursery([
    tab("Records", [
      ["Date", "Batch", "What was done", "How many"],
      [text("20/07/2026"), "B1", "Sown", 100],
      [text("30/07/2026"), "B1", "Germination", 90],
      [text("24/10/2026"), "B1", "Grafting", 80],
    ]),
  ]).ready();
  nursery.ask("sidebarRecord", takesOf("B1"));
  expect(nursery.sheet("Records").getRange("A5:D5").getValues()).toEqual([
    ["24/11/2026", "B1", "Take count", 60],
  ]);
});

it("an order's day is written in the form of the others", () => {
  const text = (value: string) => ({ v: value, t: 1 });
  const nursery = openNursery([
    smallRecords(),
    tab("Orders", [
      ["Order", "Customer", "Variety", "Wanted", "By", "Delivered"],
      ["O-1", "Bo", null, 10, text("2027-09-01")],
    ]),
  ]).ready();
  const order = { order: "N-1", customer: "", variety: "", wanted: 40, by: "2027-10-01", sure: [] };
  nursery.ask("sidebarAddOrder", order);
  expect(nursery.sheet("Orders").getRange("E3").getValue()).toBe("2027-10-01");
  expect(nursery.ask("sidebarOrders", null).orders.map(({ by }) => by)).toContain("2027-10-01");
});

it("the log says that Who was typed, in an older log too", () => {
  const nursery = openNursery([smallRecords()]).ready();
  const log = nursery.sheet("Write log");
  expect(nursery.value("Write log", "A1")).toBe(`${MARK} ${ownTabs.log()}`);
  log.getRange("C2").setValue("Who");
  nursery.ask("sidebarRecord", takesOf("B1", { who: "Orrin" }));
  expect(nursery.values("Write log")[1]?.[2]).toBe("Who (as typed)");
  expect(nursery.values("Write log")[2]?.[2]).toBe("Orrin");
});
