import { describe, expect, it } from "vitest";
import * as text from "../../src/sentences/made/orders";
import { askRows, askTable } from "../support/ask";
import { AS_OF, HEADER, one, RECORDS } from "../support/small-orders";

// "any cocoa" was no variety, and a blank was filled from cocoa and mango alike.
describe("ORDER_OUTLOOK where there are several crops", () => {
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

describe("ORDER_OUTLOOK", () => {
  // 67 more of Corvnae were to be grafted, since only Amberlow was counted for the order.
  it("plans nothing while one of several names may be a slip", () => {
    const row = one("O1", "", "Amberlow or Corvnae", 400, "2028-10-01", "", "");
    expect(row["What to do"]).toBe(text.varietyMeant({ variety: "Corvnae", nearest: ["Corvane"] }));
    const plain = one("O1", "", "Zulu or Amberlow", 400, "2028-10-01", "", "");
    expect(plain["What to do"]).toContain("Amberlow");
  });
});
