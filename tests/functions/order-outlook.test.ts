import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { orderOutlooks } from "../../src/core";
import { openDoor } from "../../src/door/index";
import { missing } from "../../src/sentences/made/argument-faults";
import { noHeader, quoted } from "../../src/sentences/made/order-faults";
import * as text from "../../src/sentences/made/orders";
import { rowLoading } from "../../src/sentences/made/table-faults";
import { ordersRemarks } from "../../src/wording/order-tables";
import { orderAction } from "../../src/wording/orders";
import { ask, askRows, askTable } from "../support/ask";
import { day } from "../support/days";
import { hostIn } from "../support/host";
import { ordersTable } from "../support/nasty-tables";

const AS_OF = "2026-11-25";
const RECORDS = [
  ...[["Batch", "Variety", "Sown", "Seeds sown", "Grafted on", "Grafts made", "Takes", "Ready on"]],
  ["A-1", "Amberlow", "2026-03-01", 200, "2026-06-01", 150, 120, "2026-10-01"],
  ["A-2", "Amberlow", "2026-07-01", 200, "2026-10-01", 150, "", ""],
  ["C-1", "Corvane", "2026-03-01", 200, "2026-06-01", 150, 60, "2026-10-01"],
];
const HEADER = ["Order", "Customer", "Variety", "Wanted", "By", "Delivered", "Closed"];
const outlook = (orders: unknown[][], ...more: unknown[]) =>
  askTable("ORDER_OUTLOOK", [orders, RECORDS, "", AS_OF, ...more]);
const one = (...order: unknown[]) => outlook([HEADER, order])[0] as Record<string, unknown>;

describe("ORDER_OUTLOOK", () => {
  it("is sure of what stands ready", () => {
    expect(one("O1", "Ana", "Amberlow", 120, "2026-12-01", "", "")).toEqual({
      ...{ Order: "O1", Variety: "Amberlow", Wanted: 120, By: "2026-12-01" },
      ...{ "Likely set aside": 120, "Chance in full": 1, "Short by": 0, "Full by": "2026-12-01" },
      "What to do": text.fine(),
    });
  });

  it("asks only for what is not delivered yet", () => {
    const [row] = outlook([HEADER, ["O1", "", "Amberlow", 170, "2026-12-01", 50, ""]]);
    expect(row?.["Likely set aside"]).toBe(120);
    expect(one("O1", "", "Amberlow", 170, "2026-12-01", 170, "")["What to do"]).toBe(
      text.allDelivered(),
    );
  });

  it("sets the same plants aside once, for the earlier day", () => {
    const [first, second] = outlook([
      HEADER,
      ["later", "", "Corvane", 40, "2026-12-20", "", ""],
      ["sooner", "", "Corvane", 40, "2026-12-10", "", ""],
    ]);
    expect([first?.Order, first?.["Short by"]]).toEqual(["sooner", 0]);
    expect([second?.Order, second?.["Short by"], second?.["Likely set aside"]]).toEqual([
      ...["later", 20],
      20,
    ]);
    expect(second?.["Chance in full"]).toBe(0);
    expect(second?.["Full by"]).toBe("");
    expect(second?.["What to do"]).toBe(text.tooLateToStart());
  });

  it("takes either variety where either will do, and leaves the one that another must have", () => {
    const rows = outlook([
      HEADER,
      ["either", "", "Amberlow or Corvane", 60, "2026-12-10", "", ""],
      ["must", "", "Amberlow", 120, "2026-12-20", "", ""],
    ]);
    expect(rows.map((row) => row["Chance in full"])).toEqual([1, 1]);
  });

  // Amel3 was ordered, 601 Amel 3 stood ready, and the answer was: too late, tell the customer. A slip
  // was planned for as a variety never seen.
  describe("for a variety that no batch has", () => {
    it("plans nothing, and offers the names that may be meant", () => {
      for (const by of ["2026-11-01", "2026-12-10", "2028-10-01"]) {
        expect(one("O1", "", "Corvnae", 100, by, "", "")).toMatchObject({
          ...{ Variety: "Corvnae", "Chance in full": 0 },
          "What to do": text.varietyMeant({ variety: "Corvnae", nearest: ["Corvane"] }),
        });
      }
      expect(one("O1", "", "Zulu", 100, "2028-10-01", "", "")["What to do"]).toBe(
        text.noSuchVariety({ variety: "Zulu" }),
      );
    });

    it("names it where the order takes others, too, and plans with those", () => {
      const rows = askRows("ORDER_OUTLOOK", [
        [HEADER, ["O1", "", "Corvnae or Amberlow", 100, "2026-12-10", "", ""]],
        ...[RECORDS, "", AS_OF],
      ]);
      expect(rows.flat()).toContain(text.fine());
      const said = text.varietyOf({ order: "O1", varieties: ["Corvnae"] });
      expect(rows.at(-1)?.[0]).toBe(text.varietiesUnknown({ orders: [said] }));
    });

    it("knows a variety of which all batches are left out for their method", () => {
      const records = RECORDS.map((row, at) => [
        ...row,
        at === 0 ? "Method" : row[1] === "Corvane" ? "Kiwi" : "",
      ]);
      const [row] = askTable("ORDER_OUTLOOK", [
        [HEADER, ["O1", "", "Corvane", 100, "2028-10-01", "", ""]],
        ...[records, "", AS_OF],
      ]);
      const { noSuchVariety, varietyMeant } = text;
      expect([
        noSuchVariety({ variety: "Corvane" }),
        varietyMeant({ variety: "Corvane", nearest: ["Corvane"] }),
      ]).not.toContain(row?.["What to do"]);
    });

    it("asks nothing of records that name no variety", () => {
      const records = RECORDS.map((row) => row.filter((_, column) => column !== 1));
      const [row] = askTable("ORDER_OUTLOOK", [
        [HEADER, ["O1", "", "Amberlow", 400, "2028-10-01", "", ""]],
        ...[records, "", AS_OF],
      ]);
      expect(row?.["What to do"]).not.toBe(text.noSuchVariety({ variety: "Amberlow" }));
    });
  });

  // "any cocoa" was no variety, and a blank was filled from cocoa and mango alike.
  describe("where there are several crops", () => {
    const mixed = RECORDS.map((row, at) => [
      ...row,
      at === 0 ? "Method" : row[1] === "Corvane" ? "Mango cleft graft" : "Cocoa cleft graft",
    ]);
    const said = (order: readonly unknown[], records: unknown[][] = mixed, header = HEADER) =>
      askRows("ORDER_OUTLOOK", [[header, order], records, "", AS_OF]);
    const taken = (variety: string) =>
      askTable("ORDER_OUTLOOK", [
        [HEADER, ["O1", "", variety, 400, "2026-12-10", "", ""]],
        ...[mixed, "", AS_OF],
      ])[0]?.["Likely set aside"];

    it("counts the batches of the crop that is ordered, and no others", () => {
      expect(taken("any cocoa")).toBe(120);
      expect(taken("cacao (cualquiera)")).toBe(120);
      expect(taken("mango, any variety")).toBe(60);
      expect(taken("any mango or Amberlow")).toBe(180);
      expect(taken("Amberlow (mango)")).toBe(0);
    });

    it("plans more of that crop, by its method", () => {
      const [row] = askTable("ORDER_OUTLOOK", [
        [HEADER, ["O1", "", "any mango", 100, "2028-10-01", "", ""]],
        ...[mixed, "", AS_OF],
      ]);
      expect(row?.["What to do"]).toContain("any mango");
      const [named] = askTable("ORDER_OUTLOOK", [
        [HEADER, ["O1", "", "Corvane", 100, "2028-10-01", "", ""]],
        ...[mixed, "", AS_OF],
      ]);
      // Of one variety alone or of its crop, which has no other: the same day.
      const days = [row, named].map((one) => String(one?.["What to do"]).split(" by ")[1]);
      expect(days[0]).toBe(days[1]);
    });

    it("asks which is meant where neither variety nor crop is named", () => {
      const crops = ["cocoa", "mango"];
      expect(said(["O1", "", "", 10, "2026-12-10", "", ""])[1]?.at(-1)).toBe(
        text.whichCrop({ crops }),
      );
      const header = [...HEADER, "Crop"];
      const row = said(["O1", "", "", 120, "2026-12-10", "", "", "Cacao"], mixed, header)[1];
      expect(row?.at(-1)).toBe(text.fine());
      expect(said(["O1", "", "", 10, "2026-12-10", "", ""], RECORDS)[1]?.at(-1)).toBe(text.fine());
    });

    it("says so where no batch is of the crop", () => {
      expect(said(["O1", "", "any cofee", 10, "2028-12-10", "", ""])[1]?.at(-1)).toBe(
        text.noSuchVariety({ variety: "any cofee" }),
      );
      expect(said(["O1", "", "any cocao", 10, "2028-12-10", "", ""])[1]?.at(-1)).toBe(
        text.varietyMeant({ variety: "any cocao", nearest: ["cocoa"] }),
      );
    });

    it("names the batches whose crop is not known", () => {
      const records = mixed.map((row) =>
        row[0] === "A-2" ? [...row.slice(0, -1), "Rooted cutting"] : row,
      );
      const remark = said(["O1", "", "any cocoa", 10, "2026-12-10", "", ""], records).at(-1)?.[0];
      expect(remark).toBe(text.cropUnknown({ batches: ["A-2"] }));
    });

    it("reads no error under Crop as any", () => {
      const rows = said(["O1", "", "", 10, "2026-12-10", "", "", "#REF!"], mixed, [
        ...HEADER,
        "Crop",
      ]);
      expect(rows.flat()).not.toContain(text.whichCrop({ crops: ["cocoa", "mango"] }));
    });
  });

  // 67 more of Corvnae were to be grafted, since only Amberlow was counted for the order.
  it("plans nothing while one of several names may be a slip", () => {
    const row = one("O1", "", "Amberlow or Corvnae", 400, "2028-10-01", "", "");
    expect(row["What to do"]).toBe(text.varietyMeant({ variety: "Corvnae", nearest: ["Corvane"] }));
    const plain = one("O1", "", "Zulu or Amberlow", 400, "2028-10-01", "", "");
    expect(plain["What to do"]).toContain("Amberlow");
  });

  it("says what to graft by which day while there is time", () => {
    const row = one("O1", "", "Corvane", 100, "2027-10-01", "", "");
    expect(row["Short by"]).toBe(40);
    const door = openDoor(hostIn("Etc/UTC"));
    const timetable = door.timetable("");
    const asOf = day(AS_OF);
    const [first] = orderOutlooks({
      orders: door.orders([HEADER, ["O1", "", "Corvane", 100, "2027-10-01", "", ""]], asOf),
      records: door.records(RECORDS, { timetable, asOf, columns: undefined }),
      timetable,
      asOf,
      assurance: 0.8,
    });
    const action = first?.whatToDo;
    expect(action).toMatchObject({ code: "graft-more", variety: "Corvane" });
    if (action?.code !== "graft-more") return;
    expect(row["What to do"]).toBe(orderAction(action));
    expect(action.plants).toBeGreaterThan(40);
    expect(action.by).toBeGreaterThan(asOf);
    expect(action.by).toBeLessThan(day("2027-10-01") - 90);
  });

  it("gives an order whose day is past no chance, and says when it can be full", () => {
    const row = one("O1", "", "Amberlow", 50, "2026-11-01", "", "");
    expect(row["Chance in full"]).toBe(0);
    expect(row["Full by"]).toBe(AS_OF);
    expect(row["What to do"]).toBe(text.deliverNow());
    const short = one("O1", "", "Amberlow", 130, "2026-11-01", "", "");
    expect(short["What to do"]).toBe(text.tooLate());
  });

  it("finds the columns under other headers, in any order, below a title", () => {
    const rows = outlook([
      ["Orders of the season"],
      ["Needed by", "Qty", "Order no.", "Clone"],
      ["1 Dec 2026", "120 plants", "O1", "amberlow"],
    ]);
    expect(rows[0]).toMatchObject({ Order: "O1", Wanted: 120, "Chance in full": 1 });
  });

  it("uses every row or names it", () => {
    const table = [
      HEADER,
      ["O1", "", "Amberlow", 10, "2026-12-01", "some", ""],
      ["O2", "", "Amberlow", "many", "2026-12-01", "", ""],
      ["O3", "", "Amberlow", 10, "", "", ""],
      ["O4", "", "Amberlow", 10, "2026-12-01", "", "yes"],
      ["Total", "", "", 30, "", "", ""],
    ];
    const rows = outlook(table);
    expect(rows).toHaveLength(2);
    const remark = String(rows[1]?.Order);
    const blank = { code: "cell-blank", field: "by" } as const;
    const { remarks } = openDoor(hostIn("Etc/UTC")).orders(table, day(AS_OF));
    expect(remark).toBe(ordersRemarks(remarks, "cell"));
    expect(remarks).toMatchObject([
      {
        code: "orders-left-out",
        rows: [
          { row: 3, troubles: [{ code: "cell-unread", field: "wanted" }] },
          { row: 4, troubles: [blank] },
          { row: 6, troubles: [blank] },
        ],
      },
      {
        code: "orders-noted",
        rows: [{ row: 2, troubles: [{ code: "cell-unread", field: "delivered" }] }],
      },
    ]);
  });

  it.each([
    [[["Who", "What"]], `ORDER_OUTLOOK: ${noHeader({ start: quoted({ start: "Who" }) })}`],
    ["", missing({ argument: "orders", needs: "table" })],
    [
      [HEADER, ["", "", "", "Loading...", "", "", ""]],
      rowLoading({ argument: "orders", row: "2" }),
    ],
  ])("refuses what makes no answer possible", (orders, sentence) => {
    expect(() => ask("ORDER_OUTLOOK", [orders, RECORDS, "", AS_OF])).toThrow(sentence);
  });

  it("answers the same whatever the order of the rows of both tables", () => {
    const quiet = (rows: unknown[][]) =>
      rows.map((row) => row.map((cell) => (cell === "Loading..." ? "" : cell)));
    const shuffled = (table: unknown[][]) => {
      const header = table.findIndex((row) => row.length > 2);
      const rows = table.slice(header + 1);
      return fc
        .shuffledSubarray(rows, { minLength: rows.length })
        .map((other) => [...table.slice(0, header + 1), ...other]);
    };
    const orders = ordersTable.map(quiet).chain((t) => fc.tuple(fc.constant(t), shuffled(t)));
    const records = fc
      .shuffledSubarray(RECORDS.slice(1), { minLength: RECORDS.length - 1 })
      .map((rows) => [RECORDS[0], ...rows]);
    let rows = 0;
    // The remark names rows by their place, so the rows of the answer alone are compared.
    const answer = (o: unknown, r: unknown) =>
      askRows("ORDER_OUTLOOK", [o, r, "", AS_OF]).filter((row) => row[2] !== "");
    fc.assert(
      fc.property(orders, records, ([some, others], otherRecords) => {
        const first = answer(some, RECORDS);
        expect(answer(others, otherRecords)).toEqual(first);
        rows += first.length - 1;
      }),
      { numRuns: 60 },
    );
    expect(rows).toBeGreaterThan(30);
  });
});
