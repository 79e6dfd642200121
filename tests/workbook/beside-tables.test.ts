import { describe, expect, it } from "vitest";
import { BESIDE_NAMES } from "../../src/core";
import type { TableTold } from "../../src/wire/beside";
import { openNursery, smallRecords, tab } from "./nursery";
import { toldWords } from "./told-words";

const ONCE = { tab: "Records", columns: [], methods: [] };
/** An office's own words, in which no header says that these are orders. */
const wishes = () =>
  tab("Wishes", [
    ["Ref", "Zu wem", "Sort", "Pieces", "Fetch", "Sent"],
    ["W-1", "Meadow Farm", "Amber", 20, "2027-06-01", 5],
    ["W-2", "Meadoe Farm", "Amber", 30, "2027-07-01", 0],
    ["W-3", "Meadow Farm", "Amber", 10, "2027-08-01", 0],
  ]);
const orders: TableTold = {
  ...{ table: "orders", tab: "Wishes" },
  columns: [
    { header: "Zu wem", readAs: "Customer" },
    { header: "Pieces", readAs: "Wanted" },
    { header: "Fetch", readAs: "By" },
    { header: "Sent", readAs: null },
  ],
};
const open = (...more: Parameters<typeof tab>[]) =>
  openNursery([smallRecords(), wishes(), ...more.map((one) => tab(...one))], { newRows: 300 });
type Nursery = ReturnType<typeof open>;
const guess = (nursery: Nursery, table: string, told: readonly TableTold[] = []) => {
  const answer = nursery.ask("sidebarTables", { tab: "Records", told });
  const found = answer.tables.find((one) => one.table === table);
  if (found === undefined) throw new Error(`no such table: ${table}`);
  return { ...found, tabs: answer.tabs };
};

// Tabs of orders, crew, closed days, places and prices could be told by hand in the settings alone.
describe("tables beside the records", () => {
  it("are found by their names and headers, each with its columns and what they may be", () => {
    const nursery = open(
      [
        "Team",
        [
          ["Name", "Hours"],
          ["Kesto", 6],
        ],
      ],
      [
        "Places",
        [
          ["Place", "Holds"],
          ["N", 200],
        ],
      ],
    );
    expect(guess(nursery, "crew")).toMatchObject({ tab: "Team", isRead: true });
    expect(guess(nursery, "places")).toMatchObject({ tab: "Places", isRead: true, lostTab: null });
    expect(guess(nursery, "crew").columns).toMatchObject([
      {
        header: "Name",
        readAs: "Person",
        sure: "sure",
        samples: [{ text: "Kesto", initials: "K." }],
      },
      { header: "Hours", readAs: "Hours a day", sure: "sure" },
    ]);
    expect(guess(nursery, "prices")).toMatchObject({ tab: null, columns: [] });
    expect(guess(nursery, "orders").tabs).toEqual(["Wishes", "Team", "Places"]);
  });

  it("can be pointed at, and their headers told and left alone", () => {
    const nursery = open();
    expect(guess(nursery, "orders").tab).toBeNull();
    const pointed = guess(nursery, "orders", [{ ...orders, columns: [] }]);
    expect(pointed).toMatchObject({ tab: "Wishes" });
    expect(pointed.columns.map(({ header }) => header)).toEqual([
      ...["Ref", "Zu wem", "Sort", "Pieces", "Fetch", "Sent"],
    ]);
    const told = guess(nursery, "orders", [orders]);
    expect(told.isRead).toBe(true);
    expect(told.columns).toMatchObject([
      { header: "Ref" },
      { header: "Zu wem", readAs: "Customer", sure: "told" },
      { header: "Sort", readAs: "Variety" },
      { header: "Pieces", readAs: "Wanted", sure: "told" },
      { header: "Fetch", readAs: "By", sure: "told" },
      { header: "Sent", readAs: null, sure: "told" },
    ]);
  });

  it("are kept in the table of words, and read so from then on", () => {
    const nursery = open();
    nursery.ask("sidebarSetUp", { ...ONCE, tables: [orders] });
    expect(toldWords(nursery)).toEqual([
      "Orders | Wishes | tab",
      "Orders: Customer | Zu wem | header",
      "Orders: Wanted | Pieces | header",
      "Orders: By | Fetch | header",
      "Orders: Leave alone | Sent | header",
    ]);
    const { ordersTab, orders: read } = nursery.ask("sidebarOrders", null);
    expect(ordersTab).toBe("Wishes");
    // What was delivered is left alone.
    expect(read.map(({ customer, wanted, delivered }) => [customer, wanted, delivered])).toEqual([
      ["Meadow Farm", 20, 0],
      ["Meadoe Farm", 30, 0],
      ["Meadow Farm", 10, 0],
    ]);
    expect(nursery.ask("sidebarOpen", null).candidates.map((one) => one.tab)).toEqual(["Records"]);
    // Told once more, the new takes the place of the old.
    nursery.ask("sidebarSetUp", {
      ...ONCE,
      tables: [{ table: "orders", tab: "", columns: [{ header: "Sent", readAs: "Delivered" }] }],
    });
    expect(toldWords(nursery)).toEqual([
      "Orders: Customer | Zu wem | header",
      "Orders: Wanted | Pieces | header",
      "Orders: By | Fetch | header",
      "Orders | no tab | tab",
      "Orders: Delivered | Sent | header",
    ]);
    expect(nursery.ask("sidebarOrders", null).ordersTab).toBeNull();
  });

  // What was told of places and prices counted in functions alone: the page and its tabs passed it over.
  it("count where they were told, though another tab is called so", async () => {
    const nursery = open(
      [
        "Places",
        [
          ["Place", "Holds"],
          ["Bay 1", 5],
        ],
      ],
      [
        "Sheds",
        [
          ["Where", "Beds"],
          ["Bay 1", 500],
        ],
      ],
      [
        "What things cost",
        [
          ["Thing", "Shillings", "Unit"],
          ["Hour", 3, ""],
        ],
      ],
    );
    const told: readonly TableTold[] = [
      {
        ...{ table: "places", tab: "Sheds" },
        columns: [
          { header: "Where", readAs: "Place" },
          { header: "Beds", readAs: "Holds" },
        ],
      },
      {
        ...{ table: "prices", tab: "What things cost" },
        columns: [
          { header: "Thing", readAs: "Item" },
          { header: "Shillings", readAs: "Price" },
        ],
      },
    ];
    nursery.ask("sidebarSetUp", ONCE);
    expect(nursery.ask("sidebarLosses", { by: "" }).hasCosts).toBe(false);
    nursery.ask("sidebarSetUp", { ...ONCE, tables: told, tabs: ["places", "costs"] });
    const holds = nursery.ask("sidebarFace", { face: "places" }).rows.map((row) => row[3]);
    expect(new Set(holds)).toEqual(new Set([500]));
    expect(nursery.ask("sidebarLosses", { by: "" }).hasCosts).toBe(true);
    const formula = (name: string) => nursery.sheet(name).getRange("A3").getFormula();
    expect(formula("Places by week")).toContain("'Sheds'!");
    expect(formula("Batch costs")).toContain("'What things cost'!");
    nursery.ask("sidebarSetUp", {
      ...ONCE,
      tables: [{ table: "prices", tab: "", columns: [] }],
    });
    expect(nursery.ask("sidebarLosses", { by: "" }).hasCosts).toBe(false);
  });

  it("name a tab that was told and is gone", () => {
    const nursery = open();
    nursery.ask("sidebarSetUp", { ...ONCE, tables: [orders] });
    nursery.remove("Wishes");
    expect(guess(nursery, "orders")).toMatchObject({ tab: null, lostTab: "Wishes" });
  });

  it("take every one of our names for a column", () => {
    const nursery = open();
    const { tables } = nursery.ask("sidebarTables", { tab: "Records", told: [] });
    expect(tables.map(({ name }) => name)).toEqual(Object.values(BESIDE_NAMES));
    for (const { table, choices } of tables) {
      const columns = choices.map((readAs, at) => ({ header: `Word ${at}`, readAs }));
      nursery.ask("sidebarTables", { tab: "Records", told: [{ table, columns }] });
    }
  });

  // A header told for one table was taken for the same in every other.
  it("keep what is told of one table to itself", () => {
    const nursery = open([
      "Team",
      [
        ["Zu wem", "Std"],
        ["Kesto", 6],
      ],
    ]);
    const crew: TableTold = {
      ...{ table: "crew", tab: "Team" },
      columns: [
        { header: "Zu wem", readAs: "Person" },
        { header: "Std", readAs: "Hours a day" },
      ],
    };
    nursery.ask("sidebarSetUp", { ...ONCE, tables: [orders, crew] });
    expect(guess(nursery, "crew").columns).toMatchObject([
      { readAs: "Person" },
      { readAs: "Hours a day" },
    ]);
    expect(nursery.ask("sidebarOrders", null).orders[0]?.customer).toBe("Meadow Farm");
  });
});

describe("near-alike customers of the orders", () => {
  it("are asked about with how many orders each has, and answered as other names are", () => {
    const nursery = open();
    const answer = nursery.ask("sidebarSetUp", { ...ONCE, tables: [orders] });
    const pair = {
      ...{ column: "Customer", batches: 1, others: 2, of: "orders" },
      rare: { text: "Meadoe Farm", initials: null },
      common: { text: "Meadow Farm", initials: null },
    };
    expect(answer.words.pairs).toEqual([pair]);
    expect(nursery.ask("sidebarColumns", { tab: "Records" }).words.pairs).toEqual([pair]);
    const words = [{ word: "Meadoe Farm", name: "Meadow Farm", notSame: false }];
    expect(nursery.ask("sidebarSetUp", { ...ONCE, words }).words.pairs).toEqual([]);
    const read = nursery.ask("sidebarOrders", null).orders;
    expect(new Set(read.map(({ customer }) => customer))).toEqual(new Set(["Meadow Farm"]));
  });

  it("may be two, and are asked about no more then", () => {
    const nursery = open();
    nursery.ask("sidebarSetUp", { ...ONCE, tables: [orders] });
    const words = [{ word: "Meadoe Farm", name: "Meadow Farm", notSame: true }];
    expect(nursery.ask("sidebarSetUp", { ...ONCE, words }).words.pairs).toEqual([]);
  });
});
