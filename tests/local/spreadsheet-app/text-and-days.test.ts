import { describe, expect, it } from "vitest";
import { numberCell } from "../../../src/local/workbook-data";
import { opened } from "./opened";

describe("strings that a script writes", () => {
  it("are read as if typed", async () => {
    const { main, workbook } = opened({ locale: "en_GB", zone: "UTC" });
    const texts = ["1/2", "007", "5%", "TRUE", "2026-03-14", "=2*3", "plain"];
    main.getRange(1, 1, 1, 7).setValues([texts]);
    await workbook.settled();
    expect(main.getRange(1, 1, 1, 7).getValues()).toEqual([
      [
        new Date("2026-02-01T00:00:00Z"),
        7,
        0.05,
        true,
        new Date("2026-03-14T00:00:00Z"),
        6,
        "plain",
      ],
    ]);
    expect(main.getRange(1, 1, 1, 7).getDisplayValues()).toEqual([
      ["01/02/2026", "7", "5%", "TRUE", "2026-03-14", "6", "plain"],
    ]);
    expect(main.getRange("F1").getFormula()).toBe("=2*3");
  });

  it("stay text behind an apostrophe or in a text cell, whatever comes after", async () => {
    const { main, workbook } = opened();
    const texts = ["=1+1", "007", "1/2", "TRUE", "+A1", "2026-03-14"];
    main.getRange(1, 1, 1, 6).setValues([texts.map((text) => `'${text}`)]);
    main.getRange(2, 1, 2, 6).setNumberFormat("@");
    // The format alone keeps no formula from being one.
    main.getRange(2, 1, 1, 6).setValues([["", ...texts.slice(1)]]);
    main.getRange(3, 1, 1, 6).setValues([texts.map((text) => `'${text}`)]);
    await workbook.settled();
    const read = () => main.getRange(1, 1, 3, 6).getValues();
    const kept = [texts, ["", ...texts.slice(1)], texts];
    expect(read()).toEqual(kept);
    expect(main.getRange(1, 1, 3, 6).getFormulas().flat().join("")).toBe("");
    main.getRange(1, 1, 3, 6).setFontWeight("bold").setBackground("#eeeeee");
    main.getRange(1, 1, 2, 6).setNumberFormat("0.00");
    expect(read()).toEqual(kept);
    main.appendRow(["'=1+1", "=1+1"]);
    expect(main.getRange("A4:B4").getFormulas()).toEqual([["", "=1+1"]]);
  });

  it("keep emoji, other directions of writing and markup", () => {
    const { main } = opened();
    const texts = ["🌱 graft", "שלום", '<img src=x onerror="a()">', "line\nbreak", "e\u0301"];
    main.getRange(1, 1, 1, 5).setValues([texts]);
    expect(main.getRange(1, 1, 1, 5).getValues()).toEqual([texts]);
  });

  it("leave the format of a cell that has one", () => {
    const { main } = opened();
    main.getRange("A1").setNumberFormat("0.000").setValue("5%");
    expect([main.getRange("A1").getValue(), main.getRange("A1").getNumberFormat()]).toEqual([
      0.05,
      "0.000",
    ]);
  });
});

describe("days", () => {
  // IANA time zone database: Auckland is UTC+13 in March and UTC+12 in July, Kolkata UTC+5:30.
  it.each([
    ["UTC", "2026-07-01T00:00:00Z"],
    ["Pacific/Auckland", "2026-06-30T12:00:00Z"],
    ["Asia/Kolkata", "2026-06-30T18:30:00Z"],
    ["America/New_York", "2026-07-01T04:00:00Z"],
  ])("are midnight in the spreadsheet's zone: %s", (zone, instant) => {
    const { main } = opened({ zone, rows: [[numberCell(46204, "yyyy-mm-dd")]] });
    expect(main.getRange("A1").getValue()).toEqual(new Date(instant));
    main.getRange("A2").setValue(new Date(instant));
    expect(main.getRange("A2").getValue()).toEqual(new Date(instant));
    expect(main.getRange("A2").getDisplayValue()).toBe("01/07/2026");
    main.getRange("A3").setValue("2026-07-01");
    expect(main.getRange("A3").getValue()).toEqual(new Date(instant));
  });

  it("keep their time of day, and survive the change of the clocks", () => {
    const { main } = opened({ zone: "Europe/Lisbon" });
    // IANA: the clocks of Lisbon went forward on 29 March 2026 at 01:00 UTC.
    const instants = ["2026-03-28T10:15:30Z", "2026-03-29T10:15:30Z"].map((text) => new Date(text));
    main.getRange("A1:B1").setValues([instants]);
    expect(main.getRange("A1:B1").getValues()).toEqual([instants]);
    expect(main.getRange("A1:B1").getDisplayValues()).toEqual([
      ["28/03/2026 10:15:30", "29/03/2026 11:15:30"],
    ]);
  });

  it("are numbers where the cell has a number format, and numbers are days where it has a date format", () => {
    const { main } = opened({ zone: "UTC" });
    main.getRange("A1").setNumberFormat("0").setValue(new Date("2026-07-01T00:00:00Z"));
    expect(main.getRange("A1").getValue()).toBe(46204);
    main.getRange("A2").setNumberFormat("d mmm yyyy").setValue(46204);
    expect(main.getRange("A2").getValue()).toEqual(new Date("2026-07-01T00:00:00Z"));
    expect(main.getRange("A2").getDisplayValue()).toBe("1 Jul 2026");
  });

  it("tells a script its two zones and its locale", () => {
    const { book, run } = opened({ zone: "Pacific/Auckland", locale: "pt_BR" });
    expect([book.getSpreadsheetTimeZone(), book.getSpreadsheetLocale()]).toEqual([
      "Pacific/Auckland",
      "pt_BR",
    ]);
    const session = run.globals.Session as unknown as { getScriptTimeZone(): string };
    expect(session.getScriptTimeZone()).toBe(Intl.DateTimeFormat().resolvedOptions().timeZone);
  });
});
