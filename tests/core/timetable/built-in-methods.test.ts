import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { builtInMethods } from "../../../src/core/timetable/built-in-methods";
import { methodWords } from "../../../src/core/timetable/method-words";
import { builtInTimetable } from "../../../src/core/timetable/read-timetable";
import { askTable } from "../../support/ask";

const { methods } = builtInTimetable();

it.each(readdirSync("src/core/timetable/methods"))(
  "a method in %s is listed in built-in-methods.ts",
  async (file) => {
    const parts: object = await import(
      `../../../src/core/timetable/methods/${file.slice(0, -3)}.ts`
    );
    const described = Object.values(parts).filter((part) => "steps" in Object(part));
    expect(builtInMethods).toEqual(expect.arrayContaining(described));
  },
);

describe.each(methods)("the built-in method $name", (method) => {
  const start = method.steps[0]?.name as string;
  const rows = askTable("BATCH_STEPS", [
    [
      ["Batch", "Method", `${start} day`, `${start} count`],
      ["B1", method.name, "2026-11-25", 1000],
    ],
    "",
    "2026-11-25",
  ]);

  it("projects a whole batch from its start to ready", () => {
    expect(rows.map((row) => row.Step)).toEqual(method.steps.map(({ name }) => name));
    expect(rows[0]).toMatchObject({ "Recorded on": "2026-11-25", "Recorded count": 1000 });
    for (const row of rows.slice(1)) {
      expect(String(row.From) <= String(row.Likely)).toBe(true);
      expect(String(row.Likely) <= String(row.By)).toBe(true);
      expect(String(row.From) > "2026-11-25").toBe(true);
    }
    const counted = rows.filter((row) => typeof row["Likely count"] === "number");
    const likely = counted.map((row) => row["Likely count"] as number);
    expect(likely).toEqual([...likely].sort((a, b) => b - a));
    expect(likely.at(-1)).toBeGreaterThan(150);
    expect(likely.at(-1)).toBeLessThan(950);
    // From three months to two years, whatever the crop.
    const days = (Date.parse(String(rows.at(-1)?.Likely)) - Date.parse("2026-11-25")) / 86_400_000;
    expect(days).toBeGreaterThan(90);
    expect(days).toBeLessThan(730);
  });

  it("is called by a crop, if any, and a way that every language knows", () => {
    const { crops, ways, isBudding, others } = methodWords(method.name);
    const where =
      "a crop goes into CropName in src/core/words/language-text.ts and into each language beside it";
    expect(crops.length > 0 ? [] : others, where).toEqual([]);
    expect(ways.length > 0 || isBudding, "a way goes into WayName there").toBe(true);
  });

  it("names a source, or that there is none, at every step but a first one without figures", () => {
    for (const { source } of method.steps)
      expect(source).toMatch(/no source|\d{4}|CPCRI|IASRI|TNAU/);
  });

  it("warns of blades where it grafts, and of pests where plants move", () => {
    const graft = method.steps.find(({ key }) => key === "grafting");
    if (method.name !== "Rooted cutting") expect(graft?.caution).toMatch(/Blades: .*permit/);
    expect(method.steps[method.ready]?.caution).toContain("plant-health certificate");
  });
});
