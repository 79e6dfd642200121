import { describe, expect, it } from "vitest";
import { gridOf } from "../../../src/core/cells/cell";
import { lostColumns } from "../../../src/core/records/lost-columns";

const TABLE = gridOf([
  ["Batch", "Sown", "Tally day"],
  ["B1", "2026-07-20", "2026-11-21"],
]);
const lost = (told: Record<string, string>) =>
  lostColumns(TABLE, { stepNames: ["Take count"], told: new Map(Object.entries(told)) });

describe("lostColumns", () => {
  it("is empty when all that was told can be followed", () => {
    expect(lost({})).toEqual([]);
    expect(lost({ " tally  DAY": "Take count day", Sown: "Leave alone" })).toEqual([]);
  });

  it("names a header that is gone, and a name that is none of ours", () => {
    expect(lost({ "Old tally": "Take count day", "Tally day": "Moon" })).toEqual([
      { name: "Take count day", header: "Old tally", why: "header" },
      { name: "Moon", header: "Tally day", why: "name" },
    ]);
  });

  it("is empty when there is no table at all, which is another trouble", () => {
    const told = new Map([["Tally day", "Take count day"]]);
    expect(lostColumns(gridOf([["milk"]]), { stepNames: [], told })).toEqual([]);
  });
});
