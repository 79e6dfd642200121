import { describe, expect, it } from "vitest";
import { type Made, type Nursery, openNursery, SETTINGS, smallRecords, tab } from "./nursery";
import { ONCE } from "./tabs-at-work";

const told = { header: "Note", readAs: null };
const moreRecords = () => ({ ...smallRecords(), name: "More" });

// Formulas of older tabs refer to two columns; remarks of the person's stand below and beside.
describe("told words of an older add-in", () => {
  it("are read, and get their third column and room for 200 without touching what stands below", async () => {
    const nursery = openNursery([smallRecords()], { newRows: 300, live: true });
    nursery.ask("sidebarSetUp", { ...ONCE, columns: [told] });
    const sheet = nursery.sheet(SETTINGS);
    // As it was made before: two columns, 40 rows.
    sheet.deleteRows(53, 160);
    sheet.getRange("A11:D11").setValues([["Our column", "Header in your sheet", "By hand", ""]]);
    sheet.getRange("C12").setValue("the old hand's");
    sheet.getRange("A53:C53").setValues([["Our year", 2026, "for the printer"]]);
    nursery.sheet("Records").getRange("Z1").setFormula("='Nursery settings'!$A$53");
    expect(nursery.ask("sidebarColumns", { tab: "Records" }).columns).toContainEqual(
      expect.objectContaining({ header: "Note", readAs: null, sure: "told" }),
    );
    nursery.ask("sidebarSetUp", ONCE);
    await nursery.w.settled();
    expect(sheet.getRange("A11:C12").getValues()).toEqual([
      ["Our name", "Your word", "What it is"],
      ["Leave alone", "Note", "header"],
    ]);
    expect(sheet.getRange("A213:C213").getValues()).toEqual([
      ["Our year", 2026, "for the printer"],
    ]);
    expect(nursery.sheet("Records").getRange("Z1").getValue()).toBe("Our year");
    expect(nursery.sheet("Stages").getRange("A3").getFormula()).toContain("$A$11:$C$211");
  });

  it("are kept by Set up, words in cells too where another tab is read", () => {
    const nursery = openNursery([smallRecords(), moreRecords()], { newRows: 60 });
    nursery.ask("sidebarSetUp", { ...ONCE, columns: [told] });
    const sheet = nursery.sheet(SETTINGS);
    sheet.getRange("A13:C14").setValues([
      ["North", "N", "value"],
      ["North", "Noth", "not the same"],
    ]);
    nursery.ask("sidebarSetUp", { ...ONCE, tab: "More" });
    expect(sheet.getRange("A12:C14").getValues()).toEqual([
      ["North", "N", "value"],
      ["North", "Noth", "not the same"],
      ["", "", ""],
    ]);
  });
});

// "Orders 26-27" with an office's own headers was not found, and could not be pointed at.
it("headers of another table, told in the settings, have its tab found and written", () => {
  const orders = tab("Orders 26-27", [
    ["Nr.", "Zu wem", "Clone", "Stück", "Bis"],
    ["7", "Farm A", "Amber", 20, "2027-06-01"],
  ]);
  const nursery = openNursery([smallRecords(), orders], { newRows: 60 });
  nursery.ask("sidebarSetUp", ONCE);
  expect(nursery.ask("sidebarOrders", null).ordersTab).toBeNull();
  nursery
    .sheet(SETTINGS)
    .getRange("A12:C15")
    .setValues([
      ["Orders: Order", "Nr.", "header"],
      ["Orders: Customer", "Zu wem", "header"],
      ["Orders: Wanted", "Stück", ""],
      ["Orders: By", "Bis", ""],
    ]);
  const answer = nursery.ask("sidebarOrders", null);
  expect(answer).toMatchObject({ ordersTab: "Orders 26-27" });
  expect(answer.orders).toMatchObject([{ customer: "Farm A", wanted: 20, by: "2027-06-01" }]);
  // Set up keeps what was told of other tables.
  nursery.ask("sidebarSetUp", ONCE);
  expect(nursery.ask("sidebarOrders", null).ordersTab).toBe("Orders 26-27");
});

it("every call reads every table beside the records by what the settings tell of it", () => {
  const own: Readonly<Record<string, readonly (readonly Made[])[]>> = {
    Orders: [
      ["Order", "Variety", "Wanted", "By"],
      ["O-1", "Amberlow", 20, "2027-06-01"],
    ],
    Crew: [
      ["Person", "Tasks", "Hours a day"],
      ["Mirel", "Grafting", 8],
    ],
    "Closed days": [["Day"], ["2026-11-26"]],
    Places: [
      ["Place", "Holds"],
      ["Bay 1", 300],
    ],
    Prices: [
      ["Item", "Price"],
      ["seed", 0.1],
    ],
  };
  const strange = (column: number) => `Qvx ${column}`;
  const tabs = (rows: (one: readonly (readonly Made[])[]) => readonly (readonly Made[])[]) =>
    Object.entries(own).map(([name, one]) => tab(name, rows(one)));
  const answers = ({ ask }: Nursery) => [
    ask("sidebarOrders", null),
    ask("sidebarWork", { days: 14 }),
    ask("sidebarCheck", null).rows.filter((one) => one.tab !== null),
    ask("sidebarToday", { daysAhead: 7 }),
  ];
  const plain = openNursery([smallRecords(), ...tabs((one) => one)], { newRows: 60 }).ready();
  const renamed = openNursery(
    [
      smallRecords(),
      ...tabs(([head = [], ...rows]) => [head.map((_, column) => strange(column)), ...rows]),
    ],
    { newRows: 60 },
  ).ready();
  const lines = Object.entries(own).flatMap(([name, [head = []]]) =>
    head.map((one, column) => [`${name}: ${one}`, strange(column), "header"]),
  );
  // Untold, a table may not be read at all, which is said by name.
  const untold = () => {
    try {
      return answers(renamed);
    } catch (refused) {
      return String(refused);
    }
  };
  expect(untold()).not.toEqual(answers(plain));
  renamed.sheet(SETTINGS).getRange(12, 1, lines.length, 3).setValues(lines);
  expect(answers(plain)[2]).toEqual([]);
  expect(answers(renamed)).toEqual(answers(plain));
});
