import { describe, expect, it } from "vitest";
import { targetKey } from "../../../src/core/records/column-target";
import type { Records } from "../../../src/core/records/records";
import { reading, troublesOf } from "./reading";

/** What each column was read as, and of those left alone what it may be first. */
const readAs = ({ columns }: Records) =>
  Object.fromEntries(
    columns.map(({ header, target, others: [best] }) => [
      header,
      target === null ? `? ${best === undefined ? "" : targetKey(best)}`.trim() : targetKey(target),
    ]),
  );

const DAYS = ["2026-09-03", "2026-09-10", "2026-09-17"];
const table = (columns: Readonly<Record<string, readonly (string | number)[]>>) =>
  reading([
    Object.keys(columns),
    ...[0, 1, 2].map((row) => Object.values(columns).map((cells) => cells[row] ?? "")),
  ]);

const BATCH = ["B1", "B2", "B3"];
const GRAFTS = [100, 90, 80];

// Headers here are invented, and written from memory of how offices write.
describe("columns by what is in them", () => {
  // People saw days read as numbers of takes that can't be read.
  it.each([
    ["Takes counted on", DAYS, "step take count day"],
    ["Takes counted", [80, 70, 60], "step take count count"],
    ["Listas el", ["3/9/26", "10/9/26", "30/9/26"], "step ready day"],
    ["Sold", DAYS, "?"],
    ["Closed", [80, 70, 60], "? step ready count"],
    ["Grafting", ["Ana", "Kesto", "Ana"], "? fact grafter"],
  ])("%s over %j is %s", (header, cells, expected) => {
    const records = table({ Batch: BATCH, "Grafts made": GRAFTS, [header]: cells });
    expect(readAs(records)[header]).toBe(expected);
  });

  // Sentences were words that nobody knows.
  it.each([
    ["How many stones were sown", [120, 110, 95], "step sowing count"],
    ["Date on which stones were sown", DAYS, "step sowing day"],
    ["How many are living", [80, 70, 60], "step take count count"],
    ["Cuántas se injertaron", [100, 90, 80], "step grafting count"],
    ["Combien ont repris", [80, 70, 60], "step take count count"],
  ])("read a header that is a sentence: %s", (header, cells, expected) => {
    expect(readAs(table({ Batch: BATCH, [header]: cells }))[header]).toBe(expected);
  });

  // The "T" of a tray was the way of a T-bud, and so was the initial of a name.
  it.each([["T-201"], ["Zenobio T."]])("take no method from a letter in a name: %s", (name) => {
    const header = "Unsaid";
    const records = table({ Batch: BATCH, [header]: [name, name, name], "Grafts made": GRAFTS });
    expect(readAs(records)[header]).not.toBe("fact method");
  });

  it("take a header of done, over nothing as yet, for closed, and no other blank one", () => {
    const records = table({ Batch: BATCH, "Grafts made": GRAFTS, done: [], Signed: [] });
    expect(readAs(records)).toMatchObject({ done: "fact closed", Signed: "?" });
    const filled = table({ Batch: BATCH, "Grafts made": GRAFTS, done: [3, 4, 5] });
    const { done } = readAs(filled);
    expect(done).not.toBe("fact closed");
  });

  it("tell a step's day and its number apart, whatever both are called", () => {
    const read = readAs(table({ Batch: BATCH, "Listas el": DAYS, "Plantas listas": GRAFTS }));
    expect(read).toMatchObject({
      "Listas el": "step ready day",
      "Plantas listas": "step ready count",
    });
    expect(table({ Batch: BATCH, Sown: DAYS, "Sown ": GRAFTS }).columns).toMatchObject([
      {},
      { target: { what: "day" } },
      { target: { what: "count" } },
    ]);
    expect(readAs(table({ Batch: BATCH, Okulasi: DAYS, Jml: GRAFTS })).Jml).toBe(
      "step grafting count",
    );
  });

  it("never take a later count of the living for the takes", () => {
    const read = readAs(
      table({
        Batch: BATCH,
        Grafts: GRAFTS,
        "Alive 3 mth": [70, 60, 50],
        "Alive 1 mth": [80, 70, 60],
      }),
    );
    expect(read).toMatchObject({
      "Alive 1 mth": "step take count count",
      "Alive 3 mth": "?",
    });
    const late = readAs(table({ Batch: BATCH, Grafts: GRAFTS, "Alive at 60 d": [70, 60, 50] }));
    expect(late["Alive at 60 d"]).toBe("? step take count count");
  });

  it("names batches where nothing else does and each name is another", () => {
    const alone = table({ "Bag lot": BATCH, Sown: DAYS, Grafts: GRAFTS });
    expect(readAs(alone)["Bag lot"]).toBe("fact batch");
    const beside = table({ Batch: BATCH, "Bag lot": ["L1", "L1", "L2"], Grafts: GRAFTS });
    expect(readAs(beside)["Bag lot"]).toBe("? fact fromLot");
    expect(readAs(table({ Xyz: BATCH, Sown: DAYS, Grafts: GRAFTS })).Xyz).toBe("? fact batch");
  });

  it("may be a step by where they stand, as counts fall and days rise", () => {
    const read = readAs(
      table({
        Batch: BATCH,
        Seeds: [140, 130, 120],
        Quux: [120, 110, 100],
        Sown: ["2026-05-03", "2026-05-10", "2026-05-17"],
        "Grafted on": DAYS,
        Zuux: ["2026-10-03", "2026-10-10", "2026-10-17"],
        Grafts: GRAFTS,
      }),
    );
    expect(read.Quux).toBe("? step germination count");
    expect(read.Zuux).toBe("? step first release day");
  });

  // An office's number beside the day stood under no header, and was lost without a word.
  it("are named by their place where they have no header", () => {
    const records = reading([
      ["Batch", "Budding", ""],
      ...BATCH.map((name, at) => [name, DAYS[at] ?? "", GRAFTS[at] ?? ""]),
    ]);
    expect(records.troubles).toMatchObject([
      { column: "", found: "3", code: "column-left", holds: "count" },
    ]);
  });

  it("are asked about where they are more than at a step before", () => {
    const columns = (up: readonly number[]) =>
      readAs(table({ Batch: BATCH, Seeds: [140, 130, 120], Up: up, Grafts: GRAFTS })).Up;
    expect(columns([120, 110, 100])).toBe("step germination count");
    expect(columns([150, 160, 170])).toBe("? step germination count");
    expect(columns([20, 10, 30])).toBe("? step germination count");
  });

  it("are each named once where they are left alone, unless they are blank, or used for take rates", () => {
    const records = table({
      Batch: BATCH,
      Moon: ["new", "new", "full"],
      Empty: [],
      "Height cm": [20, 20, 20],
      "Wood cut": DAYS,
      Grafts: GRAFTS,
    });
    expect(troublesOf(records)).toEqual(["- Moon: column-left", "- Height cm: column-left"]);
    expect(records.troubles).toMatchObject([{ holds: "text" }, { holds: "count", others: [] }]);
  });

  it("are settled by what stands beside them", () => {
    const plot = ["MT1", "MT2", "MT3"];
    const first = { "Plot code": plot, Sown: DAYS, Grafts: GRAFTS };
    expect(readAs(table(first))["Plot code"]).toBe("? fact place");
    const names = ["Ruva", "Ruva", "Tilo"];
    const both = readAs(table({ Batch: BATCH, Rootstock: ["Q1", "Q1", "Q2"], Scion: names }));
    expect(both.Scion).toBe("fact variety");
    expect(readAs(table({ Batch: BATCH, Scion: names, Grafts: GRAFTS })).Scion).toBe(
      "? fact variety",
    );
    const ways = readAs(table({ Batch: BATCH, Quux: ["cleft", "side", "cleft"], Grafts: GRAFTS }));
    expect(ways.Quux).toBe("fact method");
    const two = readAs(
      table({ Batch: BATCH, "Variety / stock": ["Ruva on Q1", "Tilo on Q1", ""], Grafts: GRAFTS }),
    );
    expect(two["Variety / stock"]).toBe("?");
  });
});

// From practice words of tests/checks/office-words and what came of them with one word made unknown.
describe("what one word alone does not settle", () => {
  it.each([
    // A film may be the cap or what binds the bud.
    ["Buka plastik", DAYS, "?"],
    // Sown into bags, or potted.
    ["Tanam polybag", DAYS, "?"],
    // Out of the nursery may be sold.
    ["Salida vivero", DAYS, "?"],
    // What is not so.
    ["Non repris", [20, 20, 20], "?"],
    // Two things, of which one is not known.
    ["Variety / zorv", ["Ana", "Bo", "Ana"], "?"],
    // Lots, not weeks.
    ["Seed zorv", ["S-4", "S-4", "S-6"], "?"],
  ])("%s over %j is left alone and named", (header, cells, expected) => {
    const records = table({
      Batch: BATCH,
      "Grafted on": ["2026-08-13", "2026-08-20", "2026-08-27"],
      "Grafts made": GRAFTS,
      [header]: cells,
    });
    expect(readAs(records)[header]?.slice(0, 1)).toBe(expected);
    expect(records.troubles.map(({ code, column }) => [code, column])).toContainEqual([
      "column-left",
      header,
    ]);
  });

  // People saw a log read as batches, and whoever did the work as the grafter.
  it("a log is known by the steps in its cells, where its header says none", () => {
    const log = [
      ["Date", "Lot concerné", "Travail fait", "Nbre", "Ouvrier"],
      ["2026-03-02", "K-11", "greffage", 120, "Awa"],
      ["2026-03-02", "K-12", "semis", 300, "Issa"],
      ["2026-03-30", "K-11", "débandage", 110, "Awa"],
    ];
    const { tables, lines } = reading(log);
    expect(tables.map(({ kind }) => kind)).toEqual(["log"]);
    expect(lines.map(({ batch, person }) => [batch, person])).toEqual([
      ["K-11", "Awa"],
      ["K-12", "Issa"],
    ]);
    const turned = reading(log.map((row) => [...row].reverse()));
    expect(turned.tables.map(({ kind }) => kind)).toEqual(["log"]);
  });

  it("batches with a column of how far they are, each once, are no log", () => {
    const { tables } = reading([
      ["Date", "Lot", "Zorv", "Variety"],
      ["2026-03-02", "K-11", "greffage", "Bora"],
      ["2026-03-02", "K-12", "semis", "Bora"],
      ["2026-03-30", "K-13", "semis", "Tiko"],
    ]);
    expect(tables.map(({ kind }) => kind)).toEqual(["batches"]);
  });

  it("names remarks under no header by the column's place, and no sum beside the table", () => {
    const { troubles } = reading([
      ["Batch", "Variety", "Grafted on", "Grafts made", "", ""],
      ["T24-01", "Alba", "2026-09-03", 100, "roots short", 120],
      ["T24-02", "Alba", "2026-09-04", 90, "", ""],
    ]);
    const left = troubles.filter(({ code }) => code === "column-left");
    expect(left.map(({ found }) => found)).toEqual(["5"]);
  });
});
