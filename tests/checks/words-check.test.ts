import { describe, expect, it } from "vitest";
import { headerLines, valueLines } from "../../src/checks/words/corpus";
import { officeTable } from "../../src/checks/words/office-table";
import {
  countsOf,
  LIMITS,
  missed,
  type Outcome,
  type Scored,
} from "../../src/checks/words/outcome";
import { headerOutcome, scoredHeaders } from "../../src/checks/words/score-headers";
import { scoredValues } from "../../src/checks/words/score-values";
import { wordOutcome } from "../../src/checks/words/word-outcome";

describe("the corpus of office words", () => {
  it("is read whole: tests/checks/office-words/SOURCE.md says how many lines it has", () => {
    expect(headerLines("seen")).toHaveLength(935);
    expect(valueLines("seen")).toHaveLength(773);
    expect(valueLines("seen").find(({ id }) => id === "V592")?.spelling).toBe('"');
    expect(valueLines("seen").find(({ id }) => id === "V507")?.spelling).toBe("Amel 3 ");
  });

  it("has the practice material of five other writers whole", () => {
    expect(headerLines("practice")).toHaveLength(1652);
    expect(valueLines("practice")).toHaveLength(1462);
  });

  it("has forty words that are never asked about", () => {
    const words = (list: readonly string[]) => new Set(list.map((word) => word.toLowerCase())).size;
    const headers = headerLines("seen").filter((line) => line.common);
    const values = valueLines("seen").filter((line) => line.common);
    expect(words(headers.map(({ header }) => header))).toBe(20);
    expect(words(values.map(({ spelling }) => spelling))).toBe(20);
  });

  it("has every line scored, once", () => {
    expect(scoredHeaders("seen")).toHaveLength(935);
    expect(scoredValues("seen")).toHaveLength(773);
  });

  // Orders, closed days, prices, places and crew: written before the code that reads them (its SOURCE.md).
  it("has tables beside the records, of which no column is passed over or read as another", () => {
    const lines = scoredHeaders("tables");
    expect(lines).toHaveLength(158);
    expect(missed(lines, LIMITS.headers)).toEqual([]);
    const beside = new Set(lines.map(({ kind }) => kind));
    expect(
      scoredHeaders("seen").filter(
        ({ kind, outcome }) => beside.has(kind) && ["wrong", "silent"].includes(outcome),
      ),
    ).toEqual([]);
  });

  it("puts a header of two rows as a sheet has it, the merged word once", () => {
    const lines = headerLines("seen").filter(({ table }) => table === "T46");
    const grid = officeTable(lines);
    const row = (at: number) => lines.map((_, column) => grid.at(at, column));
    expect(row(0).slice(0, 6)).toEqual(["Batch", "Sowing", "", "Grafting", "", ""]);
    expect(row(1).slice(0, 6)).toEqual(["", "Date", "No.", "Date", "No.", "By"]);
  });
});

describe("what becomes of a header", () => {
  const left = { key: null, asked: false, named: false };
  it.each<[string, Parameters<typeof headerOutcome>, Outcome]>([
    ["read as what it means", [{ ...left, key: "fact batch" }, ["fact batch"]], "right"],
    ["read as another without a word", [{ ...left, key: "fact note" }, ["fact batch"]], "wrong"],
    ["asked about", [{ key: "fact note", asked: true, named: false }, ["fact batch"]], "asked"],
    ["left alone without a word", [left, ["fact batch"]], "silent"],
    ["left alone and named, though ours", [{ ...left, named: true }, ["fact batch"]], "asked"],
    ["none of ours, left alone and named", [{ ...left, named: true }, []], "right"],
    ["none of ours, left alone without a word", [left, []], "silent"],
    ["none of ours, without a cell, left alone", [{ ...left, isBlank: true }, []], "right"],
    ["ours, without a cell, left alone", [{ ...left, isBlank: true }, ["fact batch"]], "silent"],
    ["none of ours, read as one of ours", [{ ...left, key: "fact note" }, []], "wrong"],
  ])("%s", (_, question, outcome) => {
    expect(headerOutcome(...question)).toBe(outcome);
  });
});

describe("what becomes of a word in a cell", () => {
  const same = { must: "same", wanted: ["grafting"] };
  const ask = { must: "ask", wanted: [] };
  it.each<[string, Parameters<typeof wordOutcome>, Outcome]>([
    ["read as what it is", ["grafting", same], "right"],
    ["read as another", ["sowing", same], "wrong"],
    ["named as not known", [null, same], "asked"],
    ["nobody could be sure, and it is asked about", [null, ask], "right"],
    ["nobody could be sure, and it is decided", ["grafting", ask], "wrong"],
    ["no step, and named so", [null, { must: "different", wanted: [] }], "right"],
  ])("%s", (_, question, outcome) => {
    expect(wordOutcome(...question)).toBe(outcome);
  });
});

describe("the limits", () => {
  const lines = (counts: Partial<Record<Outcome, number>>, common = false): readonly Scored[] =>
    Object.entries(counts).flatMap(([outcome, times]) =>
      Array.from({ length: times }, () => ({
        ...{ kind: "records", language: "en", word: "w", means: "m", readAs: "", at: "T01" },
        ...{ outcome: outcome as Outcome, common },
      })),
    );
  it("hold where few are asked about, hardly any wrong, and none silent", () => {
    const some = lines({ right: 90, asked: 9, wrong: 1 });
    expect(countsOf(some)).toEqual({ right: 90, asked: 9, wrong: 1, silent: 0 });
    expect(missed(some, { asked: 0.1 })).toEqual([]);
  });

  it.each([
    [lines({ right: 98, wrong: 2 })],
    [lines({ right: 999, silent: 1 })],
    [lines({ right: 89, asked: 11 })],
    [[...lines({ right: 99 }), ...lines({ asked: 1 }, true)]],
  ])("are missed by one alone", (some) => {
    expect(missed(some, { asked: 0.1 })).toHaveLength(1);
  });
});
