import { describe, expect, it } from "vitest";
import { type Cell, gridOf } from "../../../src/core/cells/cell";
import { orderTable } from "../../../src/core/orders/read-orders";
import { placeTable } from "../../../src/core/places/read-places";
import { fieldRules } from "../../../src/core/tables/beside-fields";
import { english } from "../../../src/core/words/english";
import { crewTable } from "../../../src/core/work/crew-table";
import { closedTable } from "../../../src/core/work/read-closed-days";

const orders = (rows: Cell[][]) => orderTable(gridOf(rows));

it("has rules of known words alone", () => {
  const parts = new Set(Object.keys(english.tableParts));
  for (const table of ["orders", "crew", "closed-days", "prices", "places"] as const) {
    for (const { field, any, none, holds } of fieldRules(table)) {
      expect(field).toMatch(/^[a-zA-Z]+$/);
      expect([...any, ...none].filter((one) => !parts.has(one))).toEqual([]);
      expect(holds.filter((one) => !["day", "count", "serial", "text"].includes(one))).toEqual([]);
    }
  }
});

// Invented tables.
describe("a table beside the records as a stranger writes it", () => {
  it("is read by the words in its headers, and names what is left", () => {
    const read = orders([
      ["Pedidos 2026"],
      ["Comprador", "Clon", "Plantas pedidas", "Para cuándo", "Celular", "Color"],
      ["Finca Alba", "A3", 600, "2026-06-10", "555-0110", "red"],
    ]);
    expect(read?.columnOf).toEqual({ customer: 0, variety: 1, wanted: 2, by: 3 });
    expect(read?.unread).toEqual([
      { header: "Celular", field: null },
      { header: "Color", field: null },
    ]);
  });

  it("reads a header that is cut short with a point, and leaves one that may be much alone", () => {
    const read = placeTable(
      gridOf([
        ["Shed name", "Cap.", "Con."],
        ["North tent", 4000, 7],
      ]),
    );
    expect(read?.columnOf).toEqual({ place: 0, holds: 1 });
    expect(read?.unread).toEqual([{ header: "Con.", field: null }]);
  });

  it("takes numbers for hours before it takes a text", () => {
    const read = crewTable(
      gridOf([
        ["Nome", "Apelido", "CH"],
        ["Zeca Prado", "Zeca", 8],
        ["Dito Lemos", "Dito", 7],
      ]),
    );
    expect(read?.guessed).toEqual([{ header: "CH", field: "hours" }]);
  });

  it("takes no day for a number and no number for a day", () => {
    const read = orders([
      ["Order date", "Customer", "Order", "Qty", "Delivery", "Closed"],
      ["2026-03-01", "Halle", "H-1", 40, "2026-09-01", "2026-09-02"],
    ]);
    expect(read?.columnOf).toEqual({ customer: 1, order: 2, wanted: 3, by: 4, closed: 5 });
    expect(read?.unread.map(({ header }) => header)).toEqual(["Order date"]);
  });

  it("takes what is still to be delivered for nothing that was", () => {
    const read = orders([
      ["Client", "Qté", "Pour le", "Reste à livrer"],
      ["Lys", 40, "2026-09-01", 15],
    ]);
    expect(read?.columnOf.delivered).toBeUndefined();
    expect(read?.unread.map(({ header }) => header)).toEqual(["Reste à livrer"]);
  });

  it("takes a column by what stands in it only where no other could be meant", () => {
    const row = ["Ana", 40, "2026-09-01"];
    expect(orders([["Zu wem", "Qty", "Bis"], row])?.guessed).toEqual([
      { header: "Bis", field: "by" },
    ]);
    expect(
      orders([
        ["Zu wem", "Qty", "Bis", "Am"],
        [...row, "2026-08-01"],
      ]),
    ).toBeNull();
    expect(orderTable(gridOf([["Zu wem", "Qty", "Bis"], row]), true)).toBeNull();
  });

  it("reads closed days of which each has a name", () => {
    const read = closedTable(
      gridOf([
        ["Feriado", "Desde el", "Hasta el"],
        ["Año nuevo", "01/01/2026", "02/01/2026"],
      ]),
    );
    expect(read?.columnOf).toEqual({ day: 1, to: 2 });
    expect(read?.unread).toEqual([{ header: "Feriado", field: null }]);
  });

  it("keeps several columns of days off apart", () => {
    const read = crewTable(
      gridOf([
        ["Nom", "Heures/jour", "Congé du", "Congé au", "Congé du 2", "Congé au 2"],
        ["Léa", 7, "2026-05-04", "2026-05-08", "2026-06-01", "2026-06-02"],
      ]),
    );
    expect(read?.off).toEqual([
      { from: 2, to: 3, openEnd: true },
      { from: 4, to: 5, openEnd: true },
    ]);
  });

  // Invented, as offices write them: work that somebody is given or can do, beside days of work.
  it.each([
    ["Name", "Works given", "Hrs/day", "Week days"],
    ["Nama", "Bisa kerja", "Jam per hari", "Hari kerja"],
  ])("tells %s: %s is what a person does, not when", (...header) => {
    const read = crewTable(gridOf([header, ["Oyok", "budding, opening", 7, "Mon-Fri"]]));
    const columns = ["person", "tasks", "hours", "days"] as const;
    expect(columns.map((field) => read?.columnsOf.get(field))).toEqual([[0], [1], [2], [3]]);
  });
});
