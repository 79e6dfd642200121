/* Longer than most: one table of told words is asked of every function that takes it. */
import { describe, expect, it } from "vitest";
import type { Cell } from "../../src/core";
import { empty } from "../../src/sentences/made/places";
import { askRows } from "../support/ask";
import { refusalText } from "../support/refusal";

const AS_OF = "2026-11-25";
const HEADER = ["Batch", "Variety", "Method", "Bench", "Grafter", "Grafted on", "Grafts made"];
/** A nursery that writes names and methods in its own words. */
const RECORDS = [
  HEADER,
  ["B1", "Amel3", "Cleft", "N", "K. M.", "2026-11-01", 100],
  ["B2", "Amel 3", "Cocoa cleft graft", "North", "Kofi Mensah", "2026-11-01", 80],
  ["B3", "Amel Three", "Our own way", "North", "KM", "2026-11-01", 50],
];
const HEAD = ["Our name", "Your word", "What it is"];
const TOLD = [
  HEAD,
  ["Place", "Bench", "header"],
  ["Cocoa cleft graft", "Cleft", "value"],
  ["Cocoa cleft graft", "our own WAY", "value"],
  ["Amel 3", "Amel three", "Value"],
  ["North", "N", "value"],
  ["Kofi Mensah", "K M", "value"],
  ["", "", ""],
  ["KM", "K.M.", "not the same"],
];
const rowsOf = (name: string, args: readonly unknown[]) => askRows(name, args).slice(1);
const stages = (told: unknown, records: readonly (readonly unknown[])[] = RECORDS) =>
  rowsOf("BATCH_STAGES", [records, "", AS_OF, 0.8, told]);

const unreadable = (name: Cell, header: Cell) =>
  refusalText({ code: "columns-unreadable", name, header });

// An office's "Cleft" left the batch out of every answer, and nothing could be told of it.
describe("a table of told words", () => {
  it("gives values, headers and names, each in the same argument", () => {
    const rows = stages(TOLD);
    expect(rows.slice(0, 3).map((row) => row.slice(0, 4))).toEqual([
      ["B1", "Amel 3", "Cocoa cleft graft", "North"],
      ["B2", "Amel 3", "Cocoa cleft graft", "North"],
      ["B3", "Amel 3", "Cocoa cleft graft", "North"],
    ]);
    expect(rows.every((row) => row[5] !== "")).toBe(true);
  });

  it("says of ORDER_PLAN's method and variety what it says of the cells", () => {
    const plan = (method: string, variety: string, records: unknown = RECORDS) =>
      rowsOf("ORDER_PLAN", [50, "2027-12-01", "", method, 0.8, records, TOLD, AS_OF, variety]);
    for (const records of [RECORDS, ""]) {
      const ours = plan("Cocoa cleft graft", "Amel 3", records);
      expect(plan("Cleft", "Amel 3", records)).toEqual(ours);
      expect(plan("our own way", "Amel three", records)).toEqual(ours);
    }
    expect(plan("Cleft", "amel3")).toEqual(plan("Cocoa cleft graft", "Amel 3"));
  });

  it("may have two columns, with or without either header, as older ones do", () => {
    for (const head of [
      [],
      [["Our column", "Header in your sheet"]],
      [["Our name", "Your word"]],
    ]) {
      expect(stages([...head, ["Place", "Bench"]])[1]?.[3]).toBe("North");
    }
  });

  it("says of a third column that is none which word it stands beside", () => {
    expect(() => stages([["North", "N", "place"]])).toThrow(
      refusalText({ code: "told-as-unknown", word: "N", found: "place" }),
    );
  });

  it("takes a number for a name, never for a header", () => {
    const records = [HEADER, ["B1", "A", "", 12, "", "2026-11-01", 100]];
    expect(
      stages(
        [
          ["Place", "Bench"],
          ["Bench 12", 12, "value"],
        ],
        records,
      )[0]?.[3],
    ).toBe("Bench 12");
    expect(() => stages([["Place", 12]])).toThrow(unreadable("Place", 12));
    expect(() => stages([["", "N", "value"]])).toThrow(unreadable("", "N"));
  });

  it("follows a name that was told to mean another, and goes in no circle", () => {
    const chain = [
      ["Amel 3", "Amel three", "value"],
      ["Amel IV", "Amel 3", "value"],
    ];
    expect(stages(chain)[2]?.[1]).toBe("Amel IV");
    const circle = [
      ["Amel 3", "Amel three", "value"],
      ["Amel three", "Amel 3", "value"],
    ];
    expect(stages(circle)[2]?.[1]).not.toBe("");
  });
});

describe("a method that was told", () => {
  type Read = readonly [crop: string, method: string, readAs: string];
  /** Expects of batches with such cells under Crop and Method what they are read as. */
  const expectRead = (told: unknown, ...batches: readonly Read[]) => {
    const rows = stages(told, [
      ["Batch", "Crop", "Method", "Grafted on", "Grafts made"],
      ...batches.map(([crop, method], at) => [`B${at + 1}`, crop, method, "2026-11-01", 100]),
    ]);
    expect(rows.slice(0, batches.length).map((row) => row[2])).toEqual(
      batches.map(([, , readAs]) => readAs),
    );
  };
  const COCOA = "Cocoa cleft graft";
  const MANGO = "Mango cleft graft";
  const RUBBER = "Rubber green bud";

  it("for all crops leaves alone a batch of another crop, which its own words tell", () => {
    const told = [[COCOA, "Cleft", "value"]];
    expectRead(told, ["", "Cleft", COCOA], ["Mango", "Cleft", MANGO], ["Cacao", "Cleft", COCOA]);
  });

  it("with its crop is meant for that crop alone, a crop alone where no method stands", () => {
    const told = [
      [RUBBER, "CC bud", "value"],
      [COCOA, "CC", "value"],
    ];
    const stone = ["Mango", "stone", "Mango stone graft"] as const;
    expectRead(told, ["CC", "bud", RUBBER], ["CC", "", COCOA], stone);
  });

  it("follows a crop's own name that was told", () => {
    const told = [
      ["Cocoa", "CC", "value"],
      [RUBBER, "Cocoa slip", "value"],
    ];
    expectRead(told, ["CC", "Cleft", COCOA], ["CC", "slip", RUBBER]);
  });

  it("is obeyed even where the crop's word says another", () => {
    expectRead([[COCOA, "Mango top", "value"]], ["Mango", "top", COCOA]);
  });
});

describe("told names in other tables", () => {
  const told = [
    ["Amel 3", "A three", "value"],
    ["Ama", "A. B.", "value"],
    ["North", "N", "value"],
  ];
  const records = [
    ["Batch", "Variety", "Place", "Grafted on", "Grafts made", "Takes", "Ready on", "Ready plants"],
    ["B1", "Amel 3", "North", "2026-03-01", 100, 80, "2026-09-01", 70],
  ];

  it("are read in orders: alone and beside others", () => {
    const orders = [
      ["Order", "Variety", "Wanted", "By"],
      ["O-1", "A three", 50, "2026-12-20"],
      ["O-2", "Zed or a THREE", 10, "2026-12-20"],
    ];
    const rows = rowsOf("ORDER_OUTLOOK", [orders, records, "", AS_OF, 0.8, told]);
    expect(rows[0]).toContain("Amel 3");
    expect(rows[1]).toContain("Zed or Amel 3");
  });

  it("say of methods what persons may do, as in the records", () => {
    const due = [
      ["Batch", "Variety", "Method", "Sown", "Seeds sown", "Germination day", "Germinated"],
      ["B1", "Amel 3", "Cocoa cleft graft", "2026-08-20", 50, "2026-09-01", 40],
    ];
    const steps = [
      ["Method", "Step", "After", "From day", "Usual day", "By day", "Counted", "Per person-hour"],
      ["Cocoa cleft graft", "Sowing", "", "", "", "", "yes", ""],
      ["Cocoa cleft graft", "Germination", "Sowing", 7, 10, 14, "yes", ""],
      ["Cocoa cleft graft", "Grafting", "Sowing", 75, 90, 120, "yes", 20],
      ["Mango stone graft", "Sowing", "", "", "", "", "yes", ""],
      ["Mango stone graft", "Grafting", "Sowing", 10, 14, 20, "yes", 20],
    ];
    const ways = [
      ["Cocoa cleft graft", "our own way", "value"],
      ["Mango stone graft", "the other way", "value"],
      ["Grafting: Cocoa cleft graft", "level 2", "value"],
    ];
    const persons = (tasks: string) =>
      rowsOf("WORK_PLAN", [
        due,
        steps,
        [
          ["Person", "Tasks", "Hours a day"],
          ["Ana", tasks, 8],
        ],
        AS_OF,
        30,
        "",
        ways,
      ]).map((row) => row[6]);
    expect(persons("Grafting our own way")).toEqual(["Ana"]);
    expect(persons("Grafting: our own way")).toEqual(["Ana"]);
    expect(persons("level 2")).toEqual(["Ana"]);
    expect(persons("Grafting: the other way")).not.toContain("Ana");
  });

  it("are read in the crew and among places", () => {
    const places = [
      ["Place", "Holds"],
      ["N", 300],
    ];
    const loads = rowsOf("PLACE_LOAD", [records, "", places, AS_OF, told]);
    expect(loads[0]?.slice(0, 4)).toEqual(["North", expect.anything(), 70, 300]);
  });
});

describe("near-alike names that were told to be two", () => {
  const records = [
    ["Batch", "Variety", "Grafted on", "Grafts made"],
    ["B1", "Amberlow", "2026-11-01", 100],
    ["B2", "Amberlow", "2026-11-01", 100],
    ["B3", "Amberlo", "2026-11-01", 100],
  ];
  const found = (told: unknown) =>
    rowsOf("BATCH_CHECK", [records, "", AS_OF, told]).filter((row) => row[2] === "Amberlo");

  it("are listed no more, in whichever order", () => {
    expect(found("")).toHaveLength(1);
    expect(found([["Amberlo", "amberlow", "not the same"]])).toHaveLength(0);
    expect(found([["Amberlow", "Amberlo", "not the same"]])).toHaveLength(0);
    expect(found([["Amberlow", "Amberlo", "value"]])).toHaveLength(0);
  });
});

// An office's list of orders was not found, and could not be told.
describe("headers of the tables beside the records", () => {
  const records = [
    ["Batch", "Variety", "Sown", "Seeds sown", "Grafted on", "Grafts made", "Takes"],
    ["B1", "Amber", "2026-05-01", 120, "2026-08-01", 100, 80],
  ];
  const orders = [
    ["Sheet of Ana"],
    ["Zu wem", "Clone", "Stück", "Am", "Bis"],
    ["Farm A", "Amber", 20, "2026-11-01", "2027-06-01"],
  ];
  const told = [
    HEAD,
    ["Orders: Customer", "Zu wem", ""],
    ["Orders: Wanted", "STÜCK", "header"],
    ["orders:By", "bis", ""],
  ];
  const outlook = (columns: unknown) => [orders, records, "", AS_OF, 0.8, columns];

  it("are told under the table's name, and leave the records as they are", () => {
    expect(rowsOf("ORDER_OUTLOOK", outlook(told))[0]?.slice(0, 3)).toEqual(["Farm A", "Amber", 20]);
    expect(() => rowsOf("ORDER_OUTLOOK", outlook(""))).toThrow(
      refusalText({ code: "no-orders-header", start: "Sheet of Ana" }),
    );
  });

  it("are taken by what stands below them where only one can be meant, and that is said", () => {
    const one = orders.map((row) => row.filter((_, column) => column !== 3));
    const rows = rowsOf("ORDER_OUTLOOK", [one, records, "", AS_OF, 0.8, ""]);
    expect(rows[0]?.slice(1, 4)).toEqual(["Amber", 20, expect.anything()]);
    const said = rows.flat().join("\n");
    for (const word of ["Stück", "Bis", "Zu wem"]) expect(said).toContain(word);
  });

  it("are refused where the table has no such column", () => {
    expect(() =>
      rowsOf("ORDER_OUTLOOK", outlook([...told, ["Orders: Weight", "Clone", ""]])),
    ).toThrow(unreadable("Orders: Weight", "Clone"));
  });

  it("are told of persons, places and closed days, too", () => {
    const crew = [
      ["Wer", "Std"],
      ["Ana", 6],
    ];
    const toldCrew = [
      ["Crew: Person", "Wer"],
      ["Crew: Hours a day", "Std"],
    ];
    const plan = (columns: unknown) =>
      rowsOf("WORK_PLAN", [records, "", crew, AS_OF, 14, [["Zu am"], ["2026-11-26"]], columns]);
    expect(plan([...toldCrew, ["Closed days: Day", "Zu am"]]).length).toBeGreaterThan(0);
    expect(() => plan(toldCrew)).toThrow();
  });

  // One office heads the day of an order, a closed day and a person's name by the same word.
  it("mean in each table what was told of that one", () => {
    const crew = [
      ["Wert", "Std"],
      ["Ana", 6],
    ];
    const closed = [["Wert"], ["2026-11-26"]];
    const places = [
      ["Wert", "Std"],
      ["North", 300],
    ];
    const prices = [
      ["Wert", "Std"],
      ["seed", 0.1],
    ];
    const owed = [
      ["Name", "Wert", "Std"],
      ["Farm A", "2027-06-01", 20],
    ];
    const lines = [
      ["Orders: Customer", "Name"],
      ["Orders: By", "Wert"],
      ["Orders: Wanted", "Std"],
      ["Crew: Person", "Wert"],
      ["Crew: Hours a day", "Std"],
      ["Closed days: Day", "Wert"],
      ["Places: Place", "Wert"],
      ["Places: Holds", "Std"],
      ["Prices: Item", "Wert"],
      ["Prices: Price", "Std"],
    ];
    const answers = (columns: unknown) => [
      rowsOf("ORDER_OUTLOOK", [owed, records, "", AS_OF, 0.8, columns])[0]?.[2],
      rowsOf("WORK_PLAN", [records, "", crew, AS_OF, 14, closed, columns]).length > 0,
      String(rowsOf("PLACE_LOAD", [records, "", places, AS_OF, columns]).at(-1)?.[0]).includes(
        empty({ places: ["North"] }),
      ),
      rowsOf("BATCH_COST", [records, "", prices, AS_OF, columns])[0]?.[1],
    ];
    expect(answers(lines)).toEqual([20, true, true, 12]);
    expect(answers([...lines].reverse())).toEqual([20, true, true, 12]);
  });
});
