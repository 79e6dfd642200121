import { describe, expect, it } from "vitest";
import { correctTab, crewHappens } from "../../src/sentences/made/check";
import { workRemarks } from "../../src/wording/work-remarks";
import { type Made, openNursery, smallRecords, tab } from "./nursery";

const CREW = ["Worker", "Can do", "Hrs/day", "Days", "Phone"];

/** What Check says of a crew's tab on the page. */
function listed(...rows: readonly (readonly Made[])[]) {
  const nursery = openNursery([smallRecords(), tab("Crew", [CREW, ...rows])]).ready();
  return nursery
    .ask("sidebarCheck", null)
    .rows.filter(({ whatToDo }) => whatToDo === correctTab({ tab: "Crew" }));
}

describe("what can't be read of the crew", () => {
  it("stands in Check too, not beside the plan of work alone", () => {
    const rows = listed(
      ["Mirel", "Grafting, watering", 8, "Mon-Fri", ""],
      ["Kesto", "Grafting", 8, "now and then", ""],
      ["Tavi", "Grafting", 8, "Mon-Fri", "555"],
    );
    const say = (remark: Parameters<typeof workRemarks>[0][number]) =>
      workRemarks([remark], "page");
    expect(rows.map(({ trouble }) => trouble)).toEqual([
      say({
        ...({ code: "row-noted", table: "crew", row: 2 } as const),
        what: { code: "no-such-step", found: "watering" },
      }),
      say({
        ...({ code: "row-left-out", table: "crew", row: 3 } as const),
        why: { code: "not-weekdays", found: "now and then" },
      }),
      say({ code: "columns-unread", table: "crew", columns: [{ header: "Phone", field: null }] }),
    ]);
    expect(rows.map(({ whatHappens }) => whatHappens)).toEqual(rows.map(() => crewHappens()));
  });

  it("is nothing where all of it is read", () => {
    expect(listed(["Mirel", "Grafting", 8, "Mon-Fri", ""])).toEqual([]);
  });
});
