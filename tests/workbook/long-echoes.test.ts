import { describe, expect, it } from "vitest";
import { askedSentence, faultSentence } from "../../src/wording/writing";
import { dueRow, dueValue, setDue } from "./due-list";
import { openNursery, smallRecords, smallRow, takesOf } from "./nursery";

const LONG = "x".repeat(400);
/** A sentence with a line of somebody's text in it, or two. */
const MOST = 320;

/** A batch of a long name, whose takes were written. */
function recorded() {
  const more = smallRow({
    Batch: LONG,
    Sown: "2026-07-20",
    "Seeds sown": 100,
    "Grafted on": "2026-10-24",
    "Grafts made": 80,
    "First release": "2026-11-07",
  });
  const nursery = openNursery([smallRecords(more)], { newRows: 60 }).ready();
  const { logId } = nursery.ask("sidebarRecord", takesOf(LONG, { note: LONG }));
  return { nursery, logId: logId ?? "" };
}

// A name of 50,000 characters came back as a sentence of 50,240.
describe("a sentence repeats a line of somebody's text at most", () => {
  it("where a batch is gone that was written to", () => {
    const { nursery, logId } = recorded();
    nursery.sheet("Records").deleteRows(4, 1);
    const fault = nursery.fault("sidebarTakeBack", { logId });
    expect(fault.code).toBe("taskGone");
    expect(faultSentence(fault).length).toBeLessThan(MOST);
  });

  it("where a cell was changed since", () => {
    const { nursery, logId } = recorded();
    nursery.sheet("Records").getRange("P4").setValue("y".repeat(400));
    const { asked } = nursery.ask("sidebarTakeBack", { logId });
    expect(asked.length).toBeGreaterThan(0);
    for (const { ask } of asked) expect(askedSentence(ask).length).toBeLessThan(MOST);
  });

  it("where a count in the due list is none", () => {
    const nursery = openNursery([smallRecords()], { newRows: 60 }).ready();
    const row = dueRow(nursery, "B1");
    setDue(nursery, row, { Count: LONG, Done: true });
    nursery.w.call("writeTicked");
    const said = String(dueValue(nursery, "Written", row));
    expect(said.length).toBeLessThan(MOST);
  });

  it("where a count is more than there are", () => {
    const { nursery } = recorded();
    const { asked } = nursery.ask("sidebarRecord", takesOf(LONG, { count: 500 }));
    for (const { ask } of asked) expect(askedSentence(ask).length).toBeLessThan(MOST);
  });
});
