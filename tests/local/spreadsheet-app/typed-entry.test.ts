import { describe, expect, it } from "vitest";
import { isoOfSerial } from "../../../src/local/serial-day";
import { typedEntry } from "../../../src/local/spreadsheet-app/typed-entry";

const read = (text: string, locale = "en_GB", textFormat = false, byScript = true) =>
  typedEntry(text, { locale, textFormat, byScript, year: 2026 });
/** A day as ISO 8601, a number as it is, else the kind and what it holds. */
function said(text: string, locale?: string): unknown {
  const entry = read(text, locale);
  if (entry.kind === "number") {
    return /[ymdh]/i.test(entry.pattern.replace(/"[^"]*"/g, ""))
      ? isoOfSerial(entry.value)
      : entry.value;
  }
  if (entry.kind === "text") return entry.text;
  return entry.kind === "formula" ? entry.formula : entry.kind === "boolean" ? entry.value : "";
}

describe("typedEntry", () => {
  // The first three: the sample of developers.google.com/apps-script/reference/spreadsheet/range,
  // setValues. The others from memory, as the project's list of platform facts (C9) has them.
  it.each([
    ["2.000", 2],
    ["1,000,000", 1_000_000],
    ["$2.99", 2.99],
    ["007", 7],
    [" 12 ", 12],
    ["-3.5", -3.5],
    ["+4", 4],
    [".5", 0.5],
    ["(25)", -25],
    ["-$5", -5],
    ["5%", 0.05],
    ["12.5%", 0.125],
    ["1e5", 100_000],
    ["TRUE", true],
    ["false", false],
  ])("reads %j in an English sheet as %j", (text, meant) => {
    expect(said(text)).toBe(meant);
  });

  it.each(["1,5", "12,34,56", "B-12", "12 plants", "-", "3 of 4", "0x10", "1.2.3"])(
    "leaves %j the text that it is in an English sheet",
    (text) => {
      expect(said(text)).toBe(text);
    },
  );

  it.each([
    ["1/2", "en_GB", "2026-02-01"],
    ["1/2", "en_US", "2026-01-02"],
    ["1-2", "en_GB", "2026-02-01"],
    ["14/3/2026", "en_GB", "2026-03-14"],
    ["3/14/2026", "en_US", "2026-03-14"],
    ["2026-03-14", "en_US", "2026-03-14"],
    ["2026/3/14", "fr_FR", "2026-03-14"],
    ["14/3/26", "en_GB", "2026-03-14"],
    ["14/3/31", "en_GB", "1931-03-14"],
    ["3/2026", "en_GB", "2026-03-01"],
    ["14.3.2026", "de_DE", "2026-03-14"],
    ["1.2", "de_DE", "2026-02-01"],
    ["1.2", "en_GB", 1.2],
    ["14 Mar 2026", "en_GB", "2026-03-14"],
    ["Mar 14, 2026", "en_US", "2026-03-14"],
    ["14-March", "en_GB", "2026-03-14"],
    ["Mar 2026", "en_GB", "2026-03-01"],
    ["14 mars 2026", "fr_FR", "2026-03-14"],
    ["14 de março de 2026", "pt_BR", "2026-03-14"],
    ["14 Maret 2026", "id_ID", "2026-03-14"],
    ["2026-03-14 06:30", "en_GB", "2026-03-14 06:30"],
    ["14/3/2026 6:30 PM", "en_GB", "2026-03-14 18:30"],
  ])("reads %j in %s as %s", (text, locale, meant) => {
    expect(said(text, locale)).toBe(meant);
  });

  it.each([
    ["14/3/2026", "en_US"],
    ["30/2/2026", "en_GB"],
    ["14 mars 2026", "en_GB"],
    ["2026-03-14T06:30", "en_GB"],
    ["14 Mar Lot 2", "en_GB"],
  ])("leaves %j in %s the text that it is", (text, locale) => {
    expect(said(text, locale)).toBe(text);
  });

  it.each([
    ["1,5", "fr_FR", 1.5],
    ["1 000,5", "fr_FR", 1000.5],
    ["1.200", "pt_BR", 1200],
    ["1.200", "en_GB", 1.2],
    ["1.234.567,8", "id_ID", 1_234_567.8],
    ["1.5", "fr_FR", "1.5"],
    ["1,000", "fr_FR", 1],
  ])("reads the number %j in %s as %j", (text, locale, meant) => {
    expect(said(text, locale)).toBe(meant);
  });

  it("gives a cell the format that the way of typing asks for", () => {
    const pattern = (text: string, locale?: string) => {
      const entry = read(text, locale);
      return entry.kind === "number" ? entry.pattern : null;
    };
    expect(
      ["7", "1,000", "1,000.5", "5%", "5.5%", "$2.99", "1e3"].map((one) => pattern(one)),
    ).toEqual(["", "#,##0", "#,##0.00", "0%", "0.00%", '"$"#,##0.00', "0.00E+00"]);
    expect([pattern("2026-03-14"), pattern("14/3/2026"), pattern("10:30")]).toEqual([
      "yyyy-mm-dd",
      "dd/MM/yyyy",
      "h:mm",
    ]);
  });

  it("reads times as parts of a day", () => {
    expect(read("12:00")).toMatchObject({ value: 0.5 });
    expect(read("6:00 pm")).toMatchObject({ value: 0.75 });
    expect(read("30:00")).toMatchObject({ value: 1.25 });
    expect(read("10:75")).toMatchObject({ kind: "text" });
  });

  it("makes formulas of =, and of + and - before anything that is no number", () => {
    expect(said("=A1+1")).toBe("=A1+1");
    expect(said('=IMPORTXML("http://example.org","//a")')).toMatch(/^=IMPORTXML/);
    expect(said("+A1")).toBe("=+A1");
    expect(said("-2+3")).toBe("=-2+3");
    expect(read("=")).toEqual({ kind: "text", text: "=", forced: false });
    expect(read("- note")).toMatchObject({ kind: "formula" });
  });

  it.each(["'007", "'=1+1", "'1/2", "'TRUE", "'2026-03-14", "''quoted'"])(
    "keeps %s as text without its first apostrophe",
    (text) => {
      expect(read(text)).toEqual({ kind: "text", text: text.slice(1), forced: true });
      expect(read(text, "en_GB", true)).toEqual({
        kind: "text",
        text: text.slice(1),
        forced: true,
      });
    },
  );

  it.each(["007", "1/2", "TRUE", "5%", "+A1", "="])("keeps %s as it is in a text cell", (text) => {
    expect(read(text, "en_GB", true)).toEqual({ kind: "text", text, forced: true });
  });

  it("makes a formula of what a script writes into a text cell, not of what a person types", () => {
    expect(read("=1+1", "en_GB", true)).toEqual({ kind: "formula", formula: "=1+1" });
    expect(read("=1+1", "en_GB", true, false)).toEqual({
      kind: "text",
      text: "=1+1",
      forced: true,
    });
  });

  it("knows a blank", () => {
    expect(read("")).toEqual({ kind: "blank" });
    expect(read("", "en_GB", true)).toEqual({ kind: "blank" });
  });
});
