import { describe, expect, it } from "vitest";
import { checkedRecords } from "../../../src/core/check/checked-records";
import { builtInTimetable } from "../../../src/core/timetable/read-timetable";
import { reading } from "../records/reading";

const checked = (rows: Parameters<typeof reading>[0]) =>
  checkedRecords(reading(rows), { timetable: builtInTimetable(), faults: [] }, null).troubles;
const grafted = ["2026-09-03", 100];

describe("names that may be one", () => {
  const table = (column: string, names: readonly string[]) => [
    ["Batch", column, "Grafted on", "Grafts made"],
    ...names.map((name, at) => [`B${at + 1}`, name, ...grafted]),
  ];

  it.each([
    ["Clone", "Amberlow", "Amberlo"],
    ["Done by", "Kesto", "Kestos"],
    ["Bed", "North", "Nroth"],
    ["Rootstock", "K 82", "K 8Z"],
  ])("are a trouble of %s, with how many batches bear each", (column, common, rare) => {
    // People are not named in a list that everybody sees.
    const isPeople = column === "Done by";
    const header = isPeople ? "Grafter" : column;
    expect(checked(table(header, [common, common, rare, common.toUpperCase()]))).toEqual([
      {
        ...{ row: 4, column: header, found: isPeople ? "K. 2" : rare, code: "near-alike" },
        ...{ batches: 1, name: isPeople ? "K." : common, others: 3 },
      },
    ]);
  });

  it("are none where only digits differ, or the spelling alone", () => {
    expect(checked(table("Variety", ["Amel 3", "Amel 4", "AMEL-3", "amel3"]))).toEqual([]);
  });
});

describe("methods that can't be read", () => {
  const table = (...batches: readonly (readonly string[])[]) => [
    ["Batch", "Crop", "Graft type", "Grafted on", "Grafts made"],
    ...batches.map(([crop = "", method = ""], at) => [`B${at + 1}`, crop, method, ...grafted]),
  ];

  it("are none, or several, which are named", () => {
    const found = checked(
      table(["", "Cleft"], ["Mango", "Stone"], ["Mango", "marcot"], ["Kiwi", ""]),
    );
    expect(found.filter(({ row }) => row !== null)).toEqual([
      {
        ...{ row: 2, column: "Graft type", found: "Cleft", code: "several-methods" },
        methods: ["Cocoa cleft graft", "Mango cleft graft", "Avocado cleft graft"],
      },
      { row: 4, column: "Graft type", found: "marcot", code: "no-such-method", near: null },
      { row: 5, column: "Crop", found: "Kiwi", code: "no-such-method", near: null },
    ]);
  });

  it("name the nearest method that is known, and none where none is near", () => {
    const near = (crop: string, method: string) =>
      checked(table([crop, method])).flatMap((one) =>
        one.code === "no-such-method" ? [[one.found, one.near]] : [],
      );
    expect(near("", "Mangoo clefft grfat")).toEqual([["Mangoo clefft grfat", "Mango cleft graft"]]);
    expect(near("", "Rubber grene budd")).toEqual([["Rubber grene budd", "Rubber green bud"]]);
    expect(near("", "Layering")).toEqual([["Layering", null]]);
    // As the nursery itself calls its method in other rows.
    const own = table(["", "Greffe en fente manguier"], ["", "Grefe en fonte mangier"]);
    expect(checked(own)).toMatchObject([
      { row: 3, code: "no-such-method", near: "Greffe en fente manguier" },
    ]);
  });
});
