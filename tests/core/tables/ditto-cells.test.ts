import { describe, expect, it } from "vitest";
import { gridOf } from "../../../src/core/cells/cell";
import { priceOf, readPrices } from "../../../src/core/costs/read-prices";
import { readOrders } from "../../../src/core/orders/read-orders";
import { readPlaces } from "../../../src/core/places/read-places";
import { readCrew } from "../../../src/core/work/read-crew";
import { day } from "../../support/days";
import { sheetValues } from "../../support/sheet-values";

const ASKED = { asOf: day("2026-11-25"), localeOrder: "day-first", decimalMark: "." } as const;
const grid = (text: string) => gridOf(sheetValues(text));
const ditto = (table: string, ...headers: string[]) => ({
  code: "columns-ditto",
  table,
  columns: headers.map((header) => ({ header, field: null })),
});

describe("ditto marks in the tables beside the records", () => {
  // A customer "do." of his own was asked for by nobody.
  it.each(["do.", "same", '"', "idem", "id.", "sda", "same as above"])(
    "%s in orders is the customer above, and it is said",
    (mark) => {
      const { open, remarks } = readOrders(
        gridOf([
          ["Order", "Customer", "Variety", "Wanted", "By"],
          ["1", "Pell Growers", "Amberlow", 100, "2027-03-01"],
          ["2", mark, mark, 50, "2027-03-02"],
          ["3", "Tomas", "Corvane", 20, "2027-03-03"],
        ]),
        ASKED,
      );
      expect(open.map(({ customer, variety }) => [customer, variety])).toEqual([
        ["Pell Growers", "Amberlow"],
        ["Pell Growers", "Amberlow"],
        ["Tomas", "Corvane"],
      ]);
      expect(remarks).toEqual([ditto("orders", "Customer", "Variety")]);
    },
  );

  it("are none in the first row, nor where a name says more", () => {
    const { open, remarks } = readOrders(
      gridOf([
        ["Order", "Customer", "Wanted", "By"],
        ["1", "Sama", 100, "2027-03-01"],
        ["2", "Same Old Farm", 50, "2027-03-02"],
        ["3", "Sama", 20, "2027-03-03"],
      ]),
      ASKED,
    );
    expect(open.map(({ customer }) => customer)).toEqual(["Sama", "Same Old Farm", "Sama"]);
    expect(remarks).toEqual([]);
  });

  it("give a person of the crew another stretch, and the hours above", () => {
    const { crew, troubles } = readCrew(
      grid(`
        Person | Tasks    | Hours a day | Off from   | Off to
        Akosua | Grafting | 7           | 2026-12-01 | 2026-12-02
        -do-   | do.      | do.         | 2026-12-07 | 2026-12-08
        Kojo   | do.      | do.         |            | `),
      { ...ASKED, stepKeys: new Set(["grafting"]) },
    );
    expect(crew.map(({ name, hundredthsADay, off }) => [name, hundredthsADay, off.length])).toEqual(
      [
        ["Akosua", 700, 2],
        ["Kojo", 700, 0],
      ],
    );
    expect(troubles).toEqual([ditto("crew", "Person", "Tasks", "Hours a day")]);
  });

  it("give places and prices what stands above", () => {
    const places = readPlaces(
      grid("Place | Holds\nBay 1 | 500\nBay 2 | do.\nBay 3 | 300"),
      ASKED.decimalMark,
    );
    expect(places.places.map(({ holds }) => holds)).toEqual([500, 500, 300]);
    expect(places.troubles).toEqual([ditto("places", "Holds")]);
    const prices = readPrices(
      grid("Item | Price | Per\nBag | 50 | 100\nLabel | 20 | do."),
      ASKED.decimalMark,
    );
    expect(priceOf(prices, { item: "label", amount: 200, unit: "" })).toBeCloseTo(40, 9);
    expect(prices.troubles).toEqual([ditto("prices", "Per")]);
  });
});
