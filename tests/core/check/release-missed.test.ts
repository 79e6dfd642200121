import { describe, expect, it } from "vitest";
import type { Cell } from "../../../src/core/cells/cell";
import { checkedRecords } from "../../../src/core/check/checked-records";
import { dueTasks } from "../../../src/core/due/due-tasks";
import { day } from "../../support/days";
import { reading } from "../records/reading";
import { timetableOf } from "../timetable/typed-timetable";

const AS_OF = day("2026-05-30");

/** Where a release is asked for of B2 in a nursery that has it by habit: as late on the due list, and in Check. */
function missed(steps: string, columns: Readonly<Record<string, readonly [Cell, Cell]>>) {
  const built = timetableOf(`
    Method | Step          | After    | From day | Usual day | By day | Counted | Kind
    Plum   | Grafting      |          |          |           |        | yes     |
    Plum   | First release | Grafting | 12       | 14        | 18     |         |
    ${steps}`);
  const header = ["Batch", "Grafted on", "Grafts made", "First release", ...Object.keys(columns)];
  const cells = Object.values(columns);
  const rows = [
    ["B1", "2026-03-01", 100, "2026-03-15", ...cells.map(([sound]) => sound)],
    ["B2", "2026-03-01", 100, "", ...cells.map(([, odd]) => odd)],
  ];
  const stepNames = built.timetable.methods.flatMap((one) => one.steps.map(({ name }) => name));
  const records = reading([header, ...rows], { stepNames, asOf: AS_OF });
  const due = dueTasks({ records, timetable: built.timetable, asOf: AS_OF, daysAhead: 0 });
  const isDue = due.rows.some(({ batch, step }) => batch === "B2" && step.key === "first release");
  const listed = checkedRecords(records, built, AS_OF).troubles.filter(
    ({ code }) => code === "release-missed",
  );
  return [isDue, listed.map(({ row, column }) => `${row} ${column}`)];
}

describe("a release that was never recorded", () => {
  it("is missed where buds broke, or were counted, under the wrap: shoots grow while it binds", () => {
    const look = "Plum | Bud break | First release | 10 | 14 | 21 | | ";
    expect(missed(look, { "Bud break": ["2026-03-29", "2026-03-25"] })).toEqual([
      true,
      ["3 First release"],
    ]);
    // This nursery counts the grafts whose buds broke, so that its step is no look.
    const counted = "Plum | Bud break | First release | 10 | 14 | 21 | yes | count";
    expect(
      missed(counted, {
        "Bud break": ["2026-03-29", "2026-03-25"],
        "Buds broken": [90, 80],
      }),
    ).toEqual([true, ["3 First release"]]);
  });

  it("is missed where plants were counted, which hangs on the grafting alone", () => {
    const takes = "Plum | Take count | Grafting | 28 | 30 | 35 | yes | ";
    expect(
      missed(takes, { "Take count day": ["2026-03-31", "2026-03-31"], Takes: [80, 70] }),
    ).toEqual([true, ["3 First release"]]);
  });

  it("is not missed where a job was done that nobody can do before it", () => {
    const untying = "Plum | Last untying | First release | 30 | 35 | 40 | | job";
    expect(missed(untying, { "Last untying": ["2026-04-20", "2026-04-20"] })).toEqual([false, []]);
  });

  it("is missed where only a look that hangs on it was noted", () => {
    const look = "Plum | Union looked at | First release | 20 | 25 | 40 | | look";
    expect(missed(look, { "Union looked at": ["2026-04-08", "2026-04-08"] })).toEqual([
      true,
      ["3 First release"],
    ]);
  });
});
