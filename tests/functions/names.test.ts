import { describe, expect, it } from "vitest";
import { fine } from "../../src/sentences/made/orders";
import { ask, askRows, askTable } from "../support/ask";

// An office of many hands: one variety, one bed and one grafter, in the ways in which they get written.
const AS_OF = "2026-11-25";
const HEAD = [
  ...["Batch", "Variety", "Bed", "Grafter", "Sown", "Seeds sown", "Grafted on", "Grafts made"],
  ...["Takes", "Ready on", "Ready plants"],
];
const WAYS = [
  ["Amel 3", "Bed 2", "Tano V."],
  ["Amel 3", "Bed 2", "Tano V."],
  ["AMEL-3", "bed-2", "tano v"],
  ["amel3", "BED2", "TANO V"],
  ["Ａｍｅｌ　３ ", "Bed  2", "Tano V"],
  ["Amél 3", "Béd 2", "Táno V."],
] as const;
const tableOf = (ways: readonly (readonly string[])[]) => [
  HEAD,
  ...ways.map(([variety, bed, grafter], at) => [
    ...[`B${at + 1}`, variety, bed, grafter, "2026-03-01", 200, "2026-06-01", 150],
    ...[100 + at, "2026-10-01", 90 + at],
  ]),
];
const RECORDS = tableOf(WAYS);
const SPELT_ALIKE = tableOf(WAYS.map(() => WAYS[0]));

const outlook = (records: unknown[][], variety: string) =>
  askTable("ORDER_OUTLOOK", [
    [
      ["Order", "Variety", "Wanted", "By"],
      ["O1", variety, 540, "2026-12-20"],
    ],
    records,
    "",
    AS_OF,
  ])[0];

describe("names as people write them", () => {
  it("are one name in every answer, in the commonest spelling", () => {
    const asked: [string, unknown[]][] = [
      ["BATCH_READY", ["", AS_OF]],
      ["BATCH_STAGES", ["", AS_OF]],
      ["BATCH_DUE", ["", AS_OF]],
    ];
    for (const [name, more] of asked) {
      expect([name, ask(name, [RECORDS, ...more])]).toEqual([
        name,
        ask(name, [SPELT_ALIKE, ...more]),
      ]);
    }
    for (const by of ["Variety", "Place", "Grafter"]) {
      const rows = ask("TAKE_SUMMARY", [RECORDS, by]);
      expect(rows).toEqual(ask("TAKE_SUMMARY", [SPELT_ALIKE, by]));
    }
  });

  it("find what stands ready, however the order spells it", () => {
    const plain = outlook(SPELT_ALIKE, "Amel 3");
    expect(plain?.["What to do"]).toBe(fine());
    for (const variety of ["Amel 3", "Amel3", "amel-3", "Ａｍｅｌ３"]) {
      expect(outlook(RECORDS, variety)).toEqual({ ...plain, Variety: variety });
    }
  });

  it("plan an order by the takes of the variety that is meant", () => {
    const plan = (variety: string) =>
      ask("ORDER_PLAN", [150, "2027-12-01", "", "", 0.8, RECORDS, "", AS_OF, variety]);
    const meant = plan("Amel 3");
    expect(plan("amel3")).toEqual(meant);
    expect(plan("Amel 4")).not.toEqual(meant);
  });

  it("are one place in the load of places", () => {
    const places = [
      ["Place", "Holds"],
      ["BED 2", 500],
    ];
    const load = (records: unknown[][]) => ask("PLACE_LOAD", [records, "", places, AS_OF]);
    expect(load(RECORDS)).toEqual(load(SPELT_ALIKE));
  });
});

// The same tape in two spellings was two groups.
describe("names under a column of the nursery's own", () => {
  it("are one group where they are one name, and stay apart where signs tell them", () => {
    const texts = ["Blue tape", "blue  tape", "Blue tape", "A", "A-", "5", "-5"];
    const records = [
      ["Batch", "Grafted on", "Grafts made", "Takes", "Tape"],
      ...texts.map((tape, at) => [`B${at}`, "2026-08-01", 100, 80, tape]),
    ];
    const groups = askRows("TAKE_SUMMARY", [records, "Tape"])
      .slice(1)
      .map(([tape]) => String(tape));
    expect(groups).toEqual(expect.arrayContaining(["Blue tape", "A", "A-", "5", "-5"]));
    expect(groups.filter((one) => one.toLowerCase().startsWith("blue"))).toEqual(["Blue tape"]);
  });
});
