import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Cell } from "../../src/core/cells/cell";
import { comparedTakes } from "../../src/core/takes/compared-takes";
import { summedTakes } from "../../src/core/takes/summed-takes";
import { takeReasons } from "../../src/core/takes/take-reasons";
import { takeTrend } from "../../src/core/takes/take-trend";
import * as header from "../../src/sentences/made/take-columns";
import * as text from "../../src/sentences/made/takes";
import {
  comparedTable,
  reasonsTable,
  summaryTable,
  trendTable,
} from "../../src/wording/take-tables";
import { ratedWords } from "../../src/wording/takes";
import { reading } from "../core/records/reading";
import { csvRows } from "../samples/csv-rows";

const HEADER = ["Batch", "Variety", "Grafter", "Grafted on", "Grafts made", "Takes"];
const ROWS = [
  ["B1", "Alba", "Ana", "2026-03-02", 100, 80],
  ["B2", "Alba", "Ben", "2026-03-03", 50, 20],
  ["B3", "", "Ana", "2026-04-02", 10, ""],
  ["B4", "Nera", "Ben", "2026-04-02", 40, 44],
];
const records = (rows: readonly (readonly Cell[])[] = ROWS, head = HEADER) =>
  reading([head, ...rows]);
const names = ({ columns }: { columns: readonly { name: string }[] }) =>
  columns.map(({ name }) => name);

describe("take rates by group", () => {
  it("have the columns that they always had, in their order", () => {
    const summed = summedTakes({ records: records(), by: "Variety", level: 0.95 });
    const table = summaryTable(summed);
    // Beside the spread stands what a batch of the usual size mostly takes.
    const usual = (group: number) => {
      const found = summed.groups[group]?.remarks.find(({ code }) => code === "usual-batch");
      if (found?.code !== "usual-batch") throw new Error("no usual batch");
      return text.usualBatch(found);
    };
    expect(names(table)).toEqual([
      "Variety",
      header.batches(),
      header.grafted(),
      header.taken(),
      header.takeRate(),
      header.from(),
      header.to(),
      header.spread(),
      header.remarks(),
    ]);
    expect(table.rows.map((row) => [row[0], row[8]])).toEqual([
      [text.blank(), text.notCountedYet({ batches: 1 })],
      ["Alba", usual(1)],
      ["Nera", text.moreTakenThanGrafted({ batches: 1 })],
    ]);
  });

  it.each([
    "Remark",
    "Batch spread",
    "From",
    "__proto__",
    "constructor",
    "2026",
    "Grafter+2026",
    "Grafter+Grafter",
  ])("are as wide in every row as in the header, by the column %s", (by) => {
    const own = by.split("+").at(-1) as string;
    const head = ["Batch", own === "Grafter" ? "Variety" : own, "Grafter", "Grafts made", "Takes"];
    const rows = ROWS.map(([batch, variety, grafter, , made, taken]) => [
      batch as Cell,
      variety as Cell,
      grafter as Cell,
      made as Cell,
      taken as Cell,
    ]);
    const table = summaryTable(summedTakes({ records: records(rows, head), by, level: 0.95 }));
    const first = by.split("+");
    expect(names(table).slice(0, first.length + 1)).toEqual([...first, header.batches()]);
    for (const row of table.rows) expect(row).toHaveLength(table.columns.length);
  });
});

describe("the comparison", () => {
  const takes = comparedTakes({
    records: records(),
    by: "Grafter",
    evenFor: "Variety",
    level: 0.95,
  });

  it("names in its remark who stands alone, by initials where people are called so", () => {
    const alone = comparedTakes({
      records: records([ROWS[0] as Cell[], ["B5", "Nera", "Ben", "2026-04-02", 40, 4]]),
      by: "Grafter",
      evenFor: "Variety",
      level: 0.95,
    });
    const groups = [
      text.groupAlone({ group: "A.", stratum: "Alba" }),
      text.groupAlone({ group: "B.", stratum: "Nera" }),
    ];
    const table = comparedTable(alone, (name) => `${name.charAt(0)}.`);
    expect(table.remark).toBe(text.nobodyToCompareWith({ groups, batches: 2 }));
    expect(table.rows.map(([first]) => first)).toEqual(["A.", "B."]);
    expect(comparedTable(alone).rows.map(([first]) => first)).toEqual(["Ana", "Ben"]);
  });

  it("has the columns that it always had, and says what is not counted", () => {
    expect(names(comparedTable(takes))).toEqual([
      "Grafter",
      header.grafted(),
      header.taken(),
      header.takeRate(),
      header.expectedRate(),
      header.evenedRate(),
      header.from(),
      header.to(),
      header.reading(),
    ]);
    expect(comparedTable(takes).remark).toBe(
      [text.notCountedYet({ batches: 1 }), text.moreTakenThanGrafted({ batches: 1 })].join(" "),
    );
  });
});

describe("takes over time", () => {
  it("mark a period that is still open, and leave what is not counted blank", () => {
    const table = trendTable(takeTrend({ records: records(), period: "month", by: null }));
    expect(names(table)).toEqual([
      header.period(),
      header.grafted(),
      header.taken(),
      header.takeRate(),
      header.usualRate(),
      header.low(),
      header.high(),
      header.reading(),
    ]);
    expect(table.rows.map((row) => [row[0], row[1], row[7]])).toEqual([
      ["2026-03", 150, text.trendUsual()],
      [text.periodOpen({ period: "2026-04" }), null, null],
    ]);
  });
});

describe("what takes go with, in the sample nursery", () => {
  const sheet = new URL("../../sample-sheets/hillside-nursery/records.csv", import.meta.url);
  const takes = takeReasons({
    records: reading(csvRows(readFileSync(sheet, "utf8"))),
    level: 0.95,
  });

  it("calls nobody the best or the worst, since nobody asked for people to be compared", () => {
    const { rows, remark } = reasonsTable(takes);
    expect(rows.find(([column]) => column === "Grafter")?.slice(3, 5)).toEqual([null, null]);
    expect(JSON.stringify(rows)).not.toMatch(/Kesto|Mirel|Orrin|Tavi/);
    expect(remark).toContain(text.peopleNotNamed());
  });

  it("names the groups of other columns with their rates", () => {
    const variety = takes.reasons.find(({ column }) => column === "Variety");
    const row = reasonsTable(takes).rows.find(([column]) => column === "Variety");
    expect(variety?.worst?.name).toBe("Duskpod");
    expect(row?.[4]).toBe(variety?.worst && ratedWords(variety.worst));
  });
});
