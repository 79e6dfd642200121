import { expect, it } from "vitest";
import { notWritten } from "../../src/sentences/made/due-rows";
import { swallowed } from "../../src/sentences/made/writing-faults";
import { SIGNS } from "../../src/workbook/host/mark";
import { dueRow, dueValue, enterDue } from "./due-list";
import { openNursery, smallRecords } from "./nursery";

// Whether rows that a filter hides take what a script writes, nobody has looked.
it.each([
  [false, `${SIGNS.written} `, 60],
  [true, `${SIGNS.refused} ${notWritten({ why: swallowed({ cell: "L2" }) })}`, ""],
])(
  "a tick of a batch that a filter hides in the records is written or said (%s)",
  async (keepsFiltered, said, takes) => {
    const nursery = openNursery([smallRecords()], { newRows: 60, keepsFiltered }).ready();
    // biome-ignore lint/suspicious/noExplicitAny: a script has no types either
    const { newFilterCriteria } = (nursery.w.uncounted() as any).SpreadsheetApp;
    const filter = nursery.sheet("Records").getRange("A1:P3").createFilter();
    filter.setColumnFilterCriteria(1, newFilterCriteria().setHiddenValues(["B1"]).build());
    const row = dueRow(nursery, "B1");
    await enterDue(nursery, row, { Count: "60", Done: "TRUE" });
    expect(nursery.w.editErrors).toEqual([]);
    expect(String(dueValue(nursery, "Written", row)).startsWith(said)).toBe(true);
    expect(nursery.value("Records", "M2")).toBe(takes);
    expect(filter.getRange().getA1Notation()).toBe("A1:P3");
  },
);
