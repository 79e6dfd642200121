import { describe, expect, it } from "vitest";
import { readReportOptions } from "../../src/local/report-options";
import * as text from "../../src/sentences/made/program-faults";

const noDays = (found: string) => text.needsNumber({ option: "--days-ahead", most: "3660", found });
/** In Node's own words. */
const NO_SHEET = "Option '--sheet <value>' argument missing";

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
        ...["--apart", "Amel 3=Amle 3", "--word", "Cocoa cleft graft=CG"],
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
        ["Takes", "Living in May", "header"],
        ["Note", "a=b", "header"],
        ["Cocoa cleft graft", "CG", "value"],
        ["Amel 3", "Amle 3", "not the same"],
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
    [["--as-of", "14/3/2026"], text.needsDay({ found: "14/3/2026" })],
    [["--as-of", "2026-02-30"], text.needsDay({ found: "2026-02-30" })],
    [["--as-of", "2026-03-14 10:00"], text.needsDay({ found: "2026-03-14 10:00" })],
    [["--days-ahead", "1.5"], noDays("1.5")],
    [["--days-ahead", "9999"], noDays("9999")],
    [["--days-ahead=-1"], noDays("-1")],
    [["a.csv", "b.csv"], text.oneFile({ files: ["a.csv", "b.csv"] })],
    [["--locale", "French"], text.needsLocale({ found: "French" })],
    [["--colour"], text.unknownWords({ why: "Unknown option '--colour'" })],
    [["--column", "Takes"], text.needsColumn({ found: "Takes" })],
    [["--column", "=Living"], text.needsColumn({ found: "=Living" })],
    [["--sheet"], text.unknownWords({ why: NO_SHEET })],
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
