import { describe, expect, it } from "vitest";
import { type CountReading, readCount } from "../../../src/core/cells/read-count";
import type { DecimalMark } from "../../../src/core/cells/read-count-text";
import type { CivilDay } from "../../../src/core/dates/civil-day";
import { allLanguages } from "../../../src/core/words/all-languages";

type Cell = Parameters<typeof readCount>[0];

const POINT: DecimalMark = ".";
const COMMA: DecimalMark = ",";

function read(cell: Cell, decimalMark: DecimalMark | null = POINT, outOf: number | null = null) {
  return readCount(cell, { decimalMark, outOf });
}

/** A plain number, of which nothing need be said. */
function plainly(count: number): CountReading {
  return { kind: "count", count, readAs: null };
}

/** A number that a person is told of. */
function said(count: number): CountReading {
  return { kind: "count", count, readAs: { code: "count", count } };
}

/** A per cent of so many. */
function saidOf(outOf: number, percent: number, count: number): CountReading {
  return { kind: "count", count, readAs: { code: "share", count, percent, outOf } };
}

const BLANK: CountReading = { kind: "blank" };

describe("reading a number of plants", () => {
  it.each(
    Object.entries({
      "312": 312,
      " 312 ": 312,
      "\u00a0312\n": 312,
      "0": 0,
      "312.0": 312,
      "312.": 312,
      "312,00": 312,
      "+312": 312,
      "007": 7,
      // Full-width digits, as East Asian keyboards write them.
      "\uff13\uff11\uff12": 312,
      "\uff11\uff0c\uff12\uff10\uff10": 1200,
      "312 plants": 312,
      "312 plants.": 312,
      "312 mudas": 312,
      "312pcs": 312,
      "312 batang": 312,
      "1,200 plants": 1200,
    }),
  )("reads %j as %d and says nothing", (text, count) => {
    expect(read(text)).toEqual(plainly(count));
  });

  it("reads a number as it stands", () => {
    for (const count of [0, 1, 312, 1_200_000]) expect(read(count)).toEqual(plainly(count));
  });

  // The mark at the thousands: plain where it can't be the workbook's decimal mark.
  it.each<[string, DecimalMark | null, CountReading]>([
    ["1,200", POINT, plainly(1200)],
    ["1,200", COMMA, said(1200)],
    ["1.200", COMMA, plainly(1200)],
    ["1.200", POINT, said(1200)],
    ["1.200", null, plainly(1200)],
    ["1,200", null, plainly(1200)],
    ["1 200", POINT, plainly(1200)],
    ["1 200", COMMA, plainly(1200)],
    ["1\u00a0200", COMMA, plainly(1200)],
    ["1\u202f200", COMMA, plainly(1200)],
    ["1'200", POINT, plainly(1200)],
    ["1’200", POINT, plainly(1200)],
    ["1,234,567", POINT, plainly(1_234_567)],
    ["1.234.567", COMMA, plainly(1_234_567)],
  ])("reads %j with the decimal mark %j", (text, mark, wanted) => {
    expect(read(text, mark)).toEqual(wanted);
  });

  it.each(
    Object.entries({
      "~300": 300,
      "~ 300": 300,
      "≈300": 300,
      "± 300": 300,
      ">300": 300,
      "300+": 300,
      "300 +": 300,
      "300?": 300,
      "300+/-": 300,
      "~1,200": 1200,
      "about 300": 300,
      "ca. 300": 300,
      "Approx 300": 300,
      "environ 300": 300,
      "3 doz": 36,
      "3 doz.": 36,
      "2.5 dozen": 30,
      "2,5 dz": 30,
      "4 lusin": 48,
      "about 3 doz": 36,
      "3 docenas": 36,
      "312 (12 weak)": 312,
      "312 [K.]": 312,
      "312(counted again)": 312,
      "1 200 (some weak)": 1200,
      "20 trays x 54": 1080,
      "20 trays × 54": 1080,
      "20 x 54": 1080,
      "20x54": 1080,
      "20 trays of 54": 1080,
      "20 plaques de 54": 1080,
      "20 trays x 54 plants": 1080,
      "２０ trays x ５４": 1080,
      "3OO": 300,
      "1o2": 102,
    }),
  )("reads %j as %d and says so", (text, count) => {
    expect(read(text)).toEqual(said(count));
    expect(read(text, COMMA)).toMatchObject({ kind: "count", count });
  });

  it("knows every language's words for a guess, a dozen and a tray", () => {
    for (const { about, dozen, trays } of allLanguages) {
      for (const word of about) expect([word, read(`${word} 300`)]).toEqual([word, said(300)]);
      for (const word of dozen) expect([word, read(`3 ${word}`)]).toEqual([word, said(36)]);
      for (const word of trays) expect([word, read(`20 ${word} x 54`)]).toEqual([word, said(1080)]);
    }
  });

  it.each<{ cell: Cell }>(
    [
      "-5",
      -5,
      "-1,200",
      3.5,
      "3.5",
      "3,5",
      "½",
      "3½",
      "3 ½",
      "1/2",
      "¼",
      "2.05 doz",
      "0.500",
      "0,500",
      "0,5",
      "150 %",
      "50 %",
      0.5,
      "75pct",
      "300-320",
      "300 or 310",
      "2 trays",
      "some",
      "many plants",
      "12 x",
      "x 12",
      // Plants out of plants, not trays of plants.
      "20 of 54",
      "20 de 54",
      "20 dead of 54",
      "12 mortes de 54",
      "20/54",
      "#N/A",
      "#REF!",
      true,
      { day: 20_000 as CivilDay },
      "3 Sep 2026",
      "1,2,3",
      "1e5",
      "Infinity",
      "NaN",
      "12 34",
      "1,20",
      "9".repeat(20),
    ].map((cell) => ({ cell })),
  )("leaves out $cell", ({ cell }) => {
    const reading = read(cell);
    expect(reading.kind === "count" ? reading : "unread").toBe("unread");
  });

  it("never takes a negative number or a part of a plant, with either decimal mark", () => {
    for (const mark of [POINT, COMMA, null]) {
      for (const text of ["-5", "3.5", "3,5", "½", "0,500", "0.500"]) {
        expect([text, mark, read(text, mark).kind]).toEqual([text, mark, "unread"]);
      }
    }
  });

  it.each<[Cell, number, CountReading]>([
    ["50 %", 240, saidOf(240, 50, 120)],
    ["50%", 240, saidOf(240, 50, 120)],
    ["62,5 %", 240, saidOf(240, 62.5, 150)],
    ["75 per cent", 240, saidOf(240, 75, 180)],
    // A cell formatted as a per cent reaches a function as its share.
    [0.5, 240, saidOf(240, 50, 120)],
    ["100 %", 240, saidOf(240, 100, 240)],
  ])("reads %j of the plants before as a number of plants", (cell, before, wanted) => {
    expect(read(cell, POINT, before)).toEqual(wanted);
    expect(read(cell, POINT, null).kind).toBe("unread");
  });

  it("takes no more than all of the plants before", () => {
    expect(read("150 %", POINT, 240).kind).toBe("unread");
  });

  it.each([
    "",
    "  ",
    "\u00a0",
    "-",
    "–",
    "—",
    "---",
    "??",
    "n/a",
    "N/A",
    "not counted",
    "?",
    "non compté",
  ])("takes %j as not counted, which is not 0", (text) => {
    expect(read(text)).toEqual(BLANK);
  });
});
