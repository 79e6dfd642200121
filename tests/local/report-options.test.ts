import { describe, expect, it } from "vitest";
import { readReportOptions } from "../../src/local/report-options";

describe("readReportOptions", () => {
  it("reads the file and every option", () => {
    expect(
      readReportOptions([
        "mine.xlsx",
        "--as-of",
        "2026-03-14",
        "--sheet=Batches 2026",
        "--days-ahead",
        "0",
        "--out",
        "elsewhere",
        "--locale",
        "fr_FR",
        "--people",
        ...["--column", "Takes= Living in May", "--column=Note=a=b"],
      ]),
    ).toEqual({
      help: false,
      file: "mine.xlsx",
      asOf: 46095,
      sheet: "Batches 2026",
      daysAhead: 0,
      out: "elsewhere",
      locale: "fr_FR",
      people: true,
      columns: [
        ["Takes", "Living in May"],
        ["Note", "a=b"],
      ],
    });
  });

  it("leaves open what was not asked for", () => {
    expect(readReportOptions([])).toEqual({
      help: false,
      out: "out",
      locale: "en_GB",
      people: false,
      columns: [],
    });
  });

  it.each([
    [["--as-of", "14/3/2026"], '--as-of needs a day as YYYY-MM-DD, got "14/3/2026"'],
    [["--as-of", "2026-02-30"], '--as-of needs a day as YYYY-MM-DD, got "2026-02-30"'],
    [["--as-of", "2026-03-14 10:00"], "--as-of needs a day"],
    [
      ["--days-ahead", "1.5"],
      '--days-ahead needs a whole number of days from 0 to 3660, got "1.5"',
    ],
    [["--days-ahead", "9999"], "--days-ahead needs"],
    [["--days-ahead=-1"], "--days-ahead needs"],
    [["a.csv", "b.csv"], "One file at a time: got a.csv and b.csv"],
    [["--locale", "French"], '--locale needs a code such as en_GB or fr_FR, got "French"'],
    [["--colour"], "Unknown option '--colour' (--help lists the options)"],
    [["--column", "Takes"], '--column needs "our name=their header", got "Takes"'],
    [["--column", "=Living"], '--column needs "our name=their header", got "=Living"'],
    [["--sheet"], "--help lists the options"],
  ])("refuses %j in one sentence", (words, sentence) => {
    expect(() => readReportOptions(words)).toThrow(sentence);
    try {
      readReportOptions(words);
    } catch (error) {
      expect((error as Error).name).toBe("PersonError");
      expect((error as Error).message).not.toContain("\n");
    }
  });
});
