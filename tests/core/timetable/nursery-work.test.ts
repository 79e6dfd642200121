import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { builtInMethods } from "../../../src/core/timetable/built-in-methods";

const json = (file: string) =>
  JSON.parse(readFileSync(`tests/fixtures/nursery-work/${file}.json`, "utf8"));
const figures: readonly { key: string; method: string; step: string; source: string }[] =
  json("data").figures;
const expected: Readonly<Record<string, Partial<Record<"from" | "usual" | "by", number>>>> =
  json("expected");

describe("second release, forcing and defoliation", () => {
  it.each(figures)("$key is as published: $source", ({ key, method, step }) => {
    const found = builtInMethods
      .find(({ name }) => name === method)
      ?.steps.find(({ name }) => name === step);
    const [from, usual, by] = found?.days ?? [];
    expect({ from, usual, by }).toMatchObject(expected[key] ?? {});
    expect(Object.keys(expected[key] ?? {})).not.toEqual([]);
  });

  it("has both releases in every grafted method, the second behind the first", () => {
    for (const { name, steps } of builtInMethods) {
      const usualOf = (step: string) => steps.find((one) => one.name === step)?.days[1];
      if (!/cleft|stone|softwood/.test(name)) continue;
      expect([name, (usualOf("Second release") ?? 0) > (usualOf("First release") ?? 999)]).toEqual([
        name,
        true,
      ]);
    }
  });
});
