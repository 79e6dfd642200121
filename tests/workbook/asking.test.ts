import { describe, expect, it } from "vitest";
import { countMissing } from "../../src/sentences/made/troubles";
import { type Nursery, openNursery, smallRecords, smallRow, takesOf } from "./nursery";

const small = () => openNursery([smallRecords()]).ready();
const questions = (nursery: Nursery, ...request: Parameters<typeof takesOf>) =>
  nursery.ask("sidebarRecord", takesOf(...request)).asked;

describe("cells that hold something", () => {
  it("are shown with both values and written only when that very question is answered", () => {
    const nursery = small();
    nursery.sheet("Records").getRange("M2").setValue(55);
    const before = nursery.snapshot("Records");
    const first = nursery.ask("sidebarRecord", takesOf("B1"));
    expect(first).toMatchObject({ written: [], logId: null });
    expect(first.asked.map(({ stands, would }) => [stands, would])).toEqual([["55", "60"]]);
    expect(first.asked[0]?.ask).toEqual({
      code: "holdsAlready",
      header: "Takes",
      cell: "M2",
      stands: "55",
      would: "60",
    });
    expect(questions(nursery, "B1", { sure: ["yes", ""] })).toEqual(first.asked);
    expect(nursery.snapshot("Records")).toBe(before);
    expect(nursery.values("Write log")).toHaveLength(2);

    const sure = first.asked.map(({ id }) => id);
    expect(nursery.ask("sidebarRecord", takesOf("B1", { sure })).written).toHaveLength(2);
    expect(nursery.value("Records", "M2")).toBe(60);
    expect(nursery.values("Write log").at(-1)?.slice(8, 10)).toEqual([55, 60]);
  });

  it("are asked about anew when the value changed between question and answer", () => {
    const nursery = small();
    nursery.sheet("Records").getRange("M2").setValue(55);
    const sure = questions(nursery, "B1").map(({ id }) => id);
    nursery.sheet("Records").getRange("M2").setValue(57);
    const again = questions(nursery, "B1", { sure });
    expect(again.map(({ stands }) => stands)).toEqual(["57"]);
    expect(nursery.value("Records", "M2")).toBe(57);
  });

  it("shows days as days", () => {
    const nursery = small();
    nursery.sheet("Records").getRange("L2").setValue("2026-11-20");
    expect(questions(nursery, "B1")).toMatchObject([{ stands: "2026-11-20", would: "2026-11-24" }]);
  });

  it.each([
    ["that shows nothing yet", '=IF(A2="x",1,"")', ""],
    ["that shows a number", "=J2*0.75", 60],
  ])("a formula %s is never written over, and that is said", async (_, formula, shows) => {
    const nursery = small();
    nursery.sheet("Records").getRange("M2").setFormula(formula);
    await nursery.w.settled();
    expect(nursery.value("Records", "M2")).toBe(shows);
    const before = nursery.snapshot("Records");
    let sure: string[] = [];
    let last: unknown;
    // As a person who answers every question with yes.
    for (const _ of [1, 2, 3]) {
      const answer = nursery.ask("sidebarRecord", takesOf("B1", { count: 61, sure }));
      expect(answer.written).toEqual([]);
      sure = [...sure, ...answer.asked.map(({ id }) => id)];
      last = answer.asked.at(-1)?.ask;
    }
    expect(last).toEqual({ code: "holdsFormula", cell: "M2" });
    expect(nursery.snapshot("Records")).toBe(before);
  });
});

describe("entries that can hardly be meant", () => {
  it("asks once about a count that was not made, and Check lists it then", () => {
    const nursery = small();
    const request = { ...takesOf("B1"), count: null };
    const { asked } = nursery.ask("sidebarRecord", request);
    expect(asked.map(({ ask }) => ask)).toEqual([
      { code: "notCounted", step: "Take count", batch: "B1" },
    ]);
    expect(nursery.value("Records", "L2")).toBe("");
    const sure = asked.map(({ id }) => id);
    expect(nursery.ask("sidebarRecord", { ...request, sure }).written).toHaveLength(1);
    // Beside a batch whose takes are counted: a nursery that never counts them is not asked for it.
    nursery.ask("sidebarRecord", takesOf("B2", { count: 10 }));
    const listed = nursery.ask("sidebarCheck", null).rows;
    expect(listed.filter(({ column }) => column === "Takes")).toMatchObject([
      { rows: [2], trouble: countMissing() },
    ]);
  });

  it("asks about more takes than grafts", () => {
    const nursery = small();
    const asked = questions(nursery, "B1", { count: 81 });
    expect(asked.map(({ ask }) => ask)).toEqual([
      { code: "moreThanBefore", count: 81, before: 80, step: "Grafting", batch: "B1" },
    ]);
    expect(nursery.value("Records", "M2")).toBe("");
    expect(questions(nursery, "B1", { count: 80 })).toEqual([]);
  });

  it("asks about a day that is still to come", () => {
    const nursery = small();
    expect(questions(nursery, "B1", { day: "2026-11-26" })).toHaveLength(1);
    expect(nursery.value("Records", "L2")).toBe("");
    expect(questions(nursery, "B1", { day: "2026-11-25" })).toEqual([]);
  });

  it("asks about a day before the step before it", () => {
    const nursery = small();
    const [asked] = questions(nursery, "B1", { day: "2026-10-23" });
    expect(asked?.ask).toMatchObject({ code: "beforeStep", earlier: "Grafting" });
    expect(questions(nursery, "B1", { day: "2026-10-24" })).toEqual([]);
  });

  it("asks about a day before an earlier step, though the step between has no day", () => {
    const late = smallRow({
      Batch: "B3",
      Sown: "2026-07-20",
      "Seeds sown": 100,
      "Germination day": "",
      Germinated: "",
    });
    const nursery = openNursery([smallRecords(late)]).ready();
    const [asked] = questions(nursery, "B3", { task: "Grafting", day: "2026-07-01", count: 50 });
    expect(asked?.ask).toMatchObject({ code: "beforeStep", earlier: "Sowing" });
  });

  it("asks about several things at once, and writes when all are answered", () => {
    const nursery = small();
    const request = { count: 90, day: "2026-11-27" };
    const sure = questions(nursery, "B1", request).map(({ id }) => id);
    expect(sure).toHaveLength(2);
    expect(questions(nursery, "B1", { ...request, sure: sure.slice(1) })).toHaveLength(2);
    expect(questions(nursery, "B1", { ...request, sure })).toEqual([]);
    expect(nursery.value("Records", "M2")).toBe(90);
  });
});
