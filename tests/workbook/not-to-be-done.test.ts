import { describe, expect, it } from "vitest";
import { NOT_NEEDED } from "../../src/workbook/host/mark";
import { dueRow, dueState, enterDue } from "./due-list";
import { type Made, type Nursery, openNursery, smallRecords, smallRow, tab } from "./nursery";
import { notWrittenText, writtenText } from "./row-texts";

const RELEASE = "First release";
const wish = (
  batch: string,
  more: { readonly note?: string; readonly sure?: readonly string[] } = {},
) => ({
  ...{ batch, task: RELEASE, day: "2026-11-25", count: null, who: "Tavi", note: "" },
  ...{ sure: [], notDone: true, ...more },
});
const grafted = { "Grafted on": "2026-11-11", "Grafts made": 50 };
const small = (more: Record<string, string> = {}) =>
  openNursery([smallRecords(smallRow({ Batch: "B3", ...grafted, ...more }))]).ready();
const due = (nursery: Nursery, batch = "B3") =>
  nursery
    .ask("sidebarToday", { daysAhead: 7 })
    .tasks.filter((one) => one.batch === batch)
    .map(({ task }) => task);

// A wrap that falls off by itself was due for ever, unless somebody knew which word to type where.
describe("a job that is said not to be done", () => {
  it("is due no more: its day's cell says so, and no other cell is touched", () => {
    const nursery = small();
    expect(due(nursery)).toContain(RELEASE);
    const before = nursery.values("Records");
    const { written, asked } = nursery.ask("sidebarRecord", wish("B3"));
    expect([written.map(({ header, value }) => [header, value]), asked]).toEqual([
      [[RELEASE, NOT_NEEDED]],
      [],
    ]);
    expect(due(nursery)).not.toContain(RELEASE);
    const changed = nursery
      .values("Records")
      .map((row, at) => row.filter((cell, column) => cell !== before[at]?.[column]));
    expect(changed.flat()).toEqual([NOT_NEEDED]);
    expect(nursery.ask("sidebarCheck", null).rows).toEqual([]);
  });

  it("is taken back like any other write, and due again", () => {
    const nursery = small();
    const before = nursery.snapshot("Records");
    const { logId } = nursery.ask("sidebarRecord", wish("B3"));
    expect(nursery.ask("sidebarLastWrites", null).writes[0]).toMatchObject({
      ...{ logId, task: RELEASE, about: "B3", who: "Tavi", state: "written" },
    });
    nursery.ask("sidebarTakeBack", { logId: logId ?? "" });
    expect(nursery.snapshot("Records")).toBe(before);
    expect(due(nursery)).toContain(RELEASE);
  });

  it("is not written over a day that stands there without a question", () => {
    const nursery = small({ [RELEASE]: "2026-11-24" });
    const { asked, written } = nursery.ask("sidebarRecord", wish("B3"));
    expect([asked.map(({ ask }) => ask.code), written]).toEqual([["holdsAlready"], []]);
    nursery.ask("sidebarRecord", wish("B3", { sure: asked.map(({ id }) => id) }));
    expect(due(nursery)).not.toContain(RELEASE);
  });

  it("is said twice for nothing", () => {
    const nursery = small();
    nursery.ask("sidebarRecord", wish("B3"));
    expect(nursery.fault("sidebarRecord", wish("B3")).code).toBe("thereAlready");
  });

  it("is ticked on the due list with the word for its count, and cleared again", async () => {
    const nursery = small();
    const before = nursery.snapshot("Records");
    const row = dueRow(nursery, "B3", RELEASE);
    await enterDue(nursery, row, { Count: "Not needed", Done: "TRUE" });
    const [cell] = nursery.ask("sidebarLastWrites", null).writes[0]?.cells ?? [];
    expect([cell?.header, cell?.value]).toEqual([RELEASE, NOT_NEEDED]);
    expect(dueState(nursery, row)).toBe(writtenText(cell?.where ?? ""));
    expect(due(nursery)).not.toContain(RELEASE);
    nursery.w.call("writeTicked");
    expect(dueState(nursery, row)).toBe(writtenText(cell?.where ?? ""));
    await enterDue(nursery, row, { Done: "FALSE" });
    expect(nursery.snapshot("Records")).toBe(before);
  });

  it("is done after all once the word is cleared", async () => {
    const nursery = small();
    const row = dueRow(nursery, "B3", RELEASE);
    await enterDue(nursery, row, { Count: "not needed", Done: "TRUE" });
    await enterDue(nursery, row, { Count: "" });
    const [last] = nursery.ask("sidebarLastWrites", null).writes;
    expect(last?.cells.map(({ value }) => value)).toEqual(["2026-11-25"]);
  });

  it("is no count that somebody does not know", async () => {
    const nursery = small();
    const before = nursery.snapshot("Records");
    const row = dueRow(nursery, "B3", RELEASE);
    await enterDue(nursery, row, { Count: "n/a", Done: "TRUE" });
    expect(nursery.snapshot("Records")).toBe(before);
    expect(dueState(nursery, row)).toBe(notWrittenText({ code: "notACount", found: "n/a" }));
  });

  it("is a line of its own where the records are one line a job", () => {
    const header = ["Date", "Batch", "What was done", "How many", "Who", "Remarks"];
    const lines: Made[][] = [
      ["2026-07-20", "B3", "Sown", 100, "Sil", null],
      ["2026-11-11", "B3", "Grafting", 80, "Tavi", null],
      // Somebody wrote a release once, so that this nursery does write them.
      ["2026-07-20", "B1", "Sown", 100, "Sil", null],
      ["2026-10-11", "B1", "Grafting", 80, "Tavi", null],
      ["2026-10-25", "B1", "First release", null, "Tavi", null],
    ];
    const nursery = openNursery([tab("Records", [header, ...lines])]).ready();
    const before = nursery.snapshot("Records");
    expect(due(nursery)).toContain(RELEASE);
    const { logId } = nursery.ask("sidebarRecord", wish("B3", { note: "clips" }));
    expect(nursery.values("Records").at(-1)).toEqual([
      NOT_NEEDED,
      "B3",
      RELEASE,
      "",
      "Tavi",
      "clips",
    ]);
    expect(due(nursery)).not.toContain(RELEASE);
    expect(nursery.fault("sidebarRecord", wish("B3", { note: "clips" })).code).toBe("thereAlready");
    nursery.ask("sidebarTakeBack", { logId: logId ?? "" });
    expect(nursery.snapshot("Records")).toBe(before);
  });
});
