import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { CONTRACT as PATH, type Promised, parametersOf } from "../../src/build/contract";
import { registry } from "../../src/functions/registry";
import { ask, askRows } from "../support/ask";
import { exampleOf } from "../support/example-of";
import { plainHeader } from "../support/plain-header";

const NONE: Promised = { parameters: "", columns: "" };

/** What is promised of each function, and changes by hand alone: npm run docs adds a new one, and no more. */
const CONTRACT: Readonly<Record<string, Promised>> = JSON.parse(readFileSync(PATH, "utf8"));

describe.each(registry)("$name", (entry) => {
  const { name } = entry;
  const { parameters, columns } = CONTRACT[name] ?? NONE;

  it("takes the arguments of the contract, the columns argument last where it reads records", () => {
    expect(parametersOf(entry)).toBe(parameters);
  });

  it("answers with exactly the columns of the contract, as the first row", () => {
    const answer = exampleOf(entry);
    const [header, ...rows] = columns === "" ? ["", ...answer] : answer;
    if (columns !== "") {
      expect((header as unknown[]).map(String).map(plainHeader).join(" · ")).toBe(columns);
    }
    expect(rows.length).toBeGreaterThan(0);
    const width = (entry.exampleHeadings ?? columns.split(" · ")).length;
    for (const row of rows as unknown[][]) {
      expect(row).toHaveLength(width);
      // A rate is blank where grafts are not counted yet.
      if (columns !== "") expect(row.some((cell) => cell !== "")).toBe(true);
    }
  });
});

describe("TAKE_RATE and TAKE_RANGE", () => {
  it("answer without a header", () => {
    expect(ask("TAKE_RATE", [80, 100])).toBe(0.8);
    expect(askRows("TAKE_RANGE", [80, 100])).toEqual([[expect.any(Number), expect.any(Number)]]);
  });
});

describe("TAKE_TREND", () => {
  it("has the column that it goes by behind the period", () => {
    const records = [
      ["Batch", "Variety", "Grafted on", "Grafts made", "Takes"],
      ["B1", "Alba", "2026-11-01", 100, 80],
    ];
    const [header = []] = askRows("TAKE_TREND", [records, "month", "Variety"]);
    const plain = (CONTRACT.TAKE_TREND ?? NONE).columns.split(" · ");
    expect(header.map(String).map(plainHeader)).toEqual([plain[0], "Variety", ...plain.slice(1)]);
  });
});

describe("the registry", () => {
  it("holds the functions of the contract above and no other", () => {
    expect(registry.map(({ name }) => name).sort()).toEqual(Object.keys(CONTRACT).sort());
  });

  it.each(registry)("says what $name does, in the words of one sentence", (entry) => {
    // A name like a cell's (three letters and digits) or one that ends in "_" can't be called.
    expect(entry.name).toMatch(/^[A-Z]+(_[A-Z]+)*$/);
    for (const sentence of [entry.sentence, ...entry.parameters.map((one) => one.sentence)]) {
      // In mode nonsense there are no words to look at.
      expect(sentence).toMatch(/^([A-Z].*\.|⟦.*)$/);
      // The formula helper drops line breaks and tags, and "*/" would end the comment.
      expect(sentence).not.toMatch(/[\n<>]|\*\//);
    }
    expect(entry.example.startsWith(`=${entry.name}(`)).toBe(true);
    const order = entry.parameters.map((one) => one.optional);
    expect(order).toEqual([...order].sort());
  });
});
