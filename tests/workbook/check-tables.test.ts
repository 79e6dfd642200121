import { describe, expect, it } from "vitest";
import * as text from "../../src/sentences/made/check";
import { noTab } from "../../src/sentences/made/set-up";
import { columnNoHeader } from "../../src/sentences/made/troubles";
import { ordersRemarks } from "../../src/wording/order-tables";
import { workRemarks } from "../../src/wording/work-remarks";
import { refusalText } from "../support/refusal";
import { AS_OF, type Made, openNursery, type Sheet, smallRecords, tab } from "./nursery";

const CREW = ["Worker", "Can do", "Hrs/day", "Days", "Phone"];

type Rows = readonly (readonly Made[])[];

/** What Check says of a tab on the page. */
function listedOf(name: string, rows: Rows) {
  return openNursery([smallRecords(), tab(name, rows)])
    .ready()
    .ask("sidebarCheck", null)
    .rows.filter(({ tab: of, whatToDo }) => {
      expect(of === name).toBe(whatToDo === text.correctTab({ tab: name }));
      return of === name;
    });
}
const listed = (...rows: Rows) => listedOf("Crew", [CREW, ...rows]);

// Check said "Correct the tab Crew", and nothing led there.
it("the tab that a trouble is about is shown, and one that is gone is named", () => {
  const nursery = openNursery([smallRecords(), tab("Crew", [CREW])]).ready();
  const { SpreadsheetApp } = nursery.w.uncounted() as { SpreadsheetApp: Sheet };
  const show = { row: null, column: "", tab: "Crew" };
  expect(nursery.ask("sidebarSelect", show)).toEqual({ selected: "Crew" });
  expect(SpreadsheetApp.getActive().getActiveSheet().getName()).toBe("Crew");
  expect(nursery.refusal("sidebarSelect", { ...show, tab: "Gone" })).toBe(noTab({ tab: "Gone" }));
  const { selected } = nursery.ask("sidebarSelect", { row: 3, column: "" });
  expect(selected).toBe("Records!A3");
});

// "Column 8" had to be counted out, in a sheet whose columns have letters.
it("a column of the records without a header is called by its letter", () => {
  const rows = ["tall", "few", "", "tall"].map((note, at) => [
    ...[`B${at}`, "2026-10-24", 100 + at, note],
  ]);
  const nursery = openNursery([
    tab("Records", [["Batch", "Grafted on", "Grafts made", ""], ...rows]),
  ]);
  const listed = nursery.ready().ask("sidebarCheck", null).rows;
  const trouble = columnNoHeader({ found: "D", holds: "text" });
  expect(listed).toContainEqual(
    expect.objectContaining({ code: "column-left", column: "", found: "D", trouble }),
  );
});

describe("what can't be read of the crew", () => {
  it("stands in Check too, not beside the plan of work alone", () => {
    const rows = listed(
      ["Mirel", "Grafting, sweeping", 8, "Mon-Fri", ""],
      ["Kesto", "Grafting", 8, "now and then", ""],
      ["Tavi", "Grafting", 8, "Mon-Fri", "555"],
    );
    const say = (remark: Parameters<typeof workRemarks>[0][number]) =>
      workRemarks([remark], "page");
    expect(rows.map(({ trouble }) => trouble)).toEqual([
      say({
        ...({ code: "row-noted", table: "crew", row: 2 } as const),
        what: { code: "no-such-step", found: "sweeping" },
      }),
      say({
        ...({ code: "row-left-out", table: "crew", row: 3 } as const),
        why: { code: "not-weekdays", found: "now and then" },
      }),
      say({ code: "columns-unread", table: "crew", columns: [{ header: "Phone", field: null }] }),
    ]);
    expect(rows.map(({ whatHappens }) => whatHappens)).toEqual(rows.map(() => text.withoutWork()));
  });

  it("is nothing where all of it is read", () => {
    expect(listed(["Mirel", "Grafting", 8, "Mon-Fri", ""])).toEqual([]);
  });
});

// Only the crew's columns were named: those of orders, closed days, places and prices were passed over.
describe("what can't be read of the other tables beside the records", () => {
  it.each([
    [
      "Orders",
      "orders",
      ["Order", "Variety", "Wanted", "By", "Lorry"],
      ["O-1", "Amberlow", 5, AS_OF, "red"],
    ],
    ["Closed days", "closed-days", ["Day", "Lorry"], [AS_OF, "red"]],
    ["Places", "places", ["Place", "Holds", "Lorry"], ["Bay 1", 300, "red"]],
    [
      "Seed samples",
      "germination",
      ["Batch", "Sample", "Seeds sown", "Day", "Came up", "Lorry"],
      ["B1", "a", 50, 7, 30, "red"],
    ],
    ["Prices", "prices", ["Item", "Price", "Per", "Lorry"], ["seed", 0.1, "", "red"]],
  ] as const)("names a column of %s that is not read", (name, table, header, row) => {
    const say = workRemarks(
      [{ code: "columns-unread", table, columns: [{ header: "Lorry", field: null }] }],
      "page",
    );
    expect(listedOf(name, [header, row]).map(({ trouble }) => trouble)).toEqual([say]);
    const cut = (cells: readonly Made[]) => cells.slice(0, -1);
    expect(listedOf(name, [cut(header), cut(row)])).toEqual([]);
  });

  it("names rows that are left out", () => {
    const said = (name: string, rows: Rows) =>
      listedOf(name, rows).map((one) => [one.trouble, one.whatHappens]);
    const why = { code: "not-a-count" } as const;
    const what = { code: "holds-unread", why } as const;
    const holds = { code: "row-noted", table: "places", row: 2, what } as const;
    const troubles = [{ code: "cell-unread", field: "wanted", why }] as const;
    const unread = { code: "orders-left-out", rows: [{ row: 2, troubles }] } as const;
    expect(
      said("Orders", [
        ["Order", "Wanted", "By"],
        ["O-1", "some", AS_OF],
      ]),
    ).toEqual([[ordersRemarks([unread], "page"), text.withoutOrders()]]);
    expect(
      said("Places", [
        ["Place", "Holds"],
        ["Bay 1", "many"],
      ]),
    ).toEqual([[workRemarks([holds], "page"), text.withoutPlaces()]]);
    expect(
      said("Prices", [
        ["Item", "Price"],
        ["seed", "dear"],
      ]),
    ).toEqual([[expect.stringContaining("dear"), text.withoutPrices()]]);
    expect(said("Closed days", [["Day"], ["now and then"]])).toEqual([
      [expect.stringContaining("now and then"), text.withoutWork()],
    ]);
  });

  it("says of a tab that is called so and can't be read at all what it lacks", () => {
    const header = ["Zu wem", "Am"];
    const rows = [header, ["Ana", "red"]];
    const lacks = (argument: string, columns: readonly string[]) =>
      refusalText({ code: "no-header-row", argument, columns });
    expect(listedOf("Prices", rows).map(({ trouble }) => trouble)).toEqual([
      lacks("prices", ["Item", "Price"]),
    ]);
    expect(listedOf("Places", rows).map(({ trouble }) => trouble)).toEqual([
      lacks("places", ["Place", "Holds"]),
    ]);
    expect(listedOf("Orders", rows).map(({ trouble }) => trouble)).toEqual([
      refusalText({ code: "no-orders-header", start: "Zu wem" }),
    ]);
  });

  it("goes on where a cell of one of them shows an error", () => {
    const crew = listed(["Mirel", "Grafting", "#REF!", "Mon-Fri", ""]);
    expect(crew.map(({ trouble }) => trouble)).toEqual([
      refusalText({ code: "row-not-ready", argument: "crew", row: 2, shown: "#REF!" }),
    ]);
  });
});
