import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { held, heldOf } from "../../src/sentences/made/batches";
import { askRows } from "../support/ask";
import { csvRows } from "./csv-rows";

const project = fileURLToPath(new URL("../..", import.meta.url));
const sample = (sheet: string) =>
  csvRows(readFileSync(`${project}/sample-sheets/hillside-nursery/${sheet}.csv`, "utf8"));
const AS_OF = "2026-11-25";

/** The cells of README's table row that begins with these words. */
function readmeRow(start: string): string[] {
  const line = readFileSync(`${project}/README.md`, "utf8")
    .split("\n")
    .find((one) => one.startsWith(`| ${start} `));
  return (line ?? "")
    .split("|")
    .slice(2, -1)
    .map((cell) => cell.trim());
}

describe("looking back in the sample nursery, as README tells it", () => {
  const numbers = sample("records").map((row) =>
    row.map((cell) => (/^\d+(?:\.\d+)?$/.test(cell) ? Number(cell) : cell)),
  );

  it.each([90, 180, 365])("%i days back", (daysBefore) => {
    const rows = askRows("BATCH_LOOKBACK", [numbers, sample("timetable"), AS_OF, daysBefore]);
    const last = rows.find(([name]) => name === held()) ?? [];
    const told = readmeRow(`${daysBefore} days`).map((cell) => {
      const [ranges, all] = cell.split(" of ").map(Number);
      return heldOf({ held: ranges as number, all: all as number });
    });
    expect(told).toEqual([last[7], last[8]]);
  });
});
