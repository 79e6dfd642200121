import { describe, expect, it } from "vitest";
import { gridOf } from "../../../src/core/cells/cell";
import { readRecords } from "../../../src/core/records/read-records";
import { builtInTimetable } from "../../../src/core/timetable/read-timetable";
import { workNeeds } from "../../../src/core/work/work-needs";
import { day } from "../../support/days";
import { sheetValues } from "../../support/sheet-values";

describe("workNeeds", () => {
  it("multiplies the needs per plant by the plants of the tasks to come, and says what it lacks", () => {
    const timetable = builtInTimetable();
    const asOf = day("2026-11-25");
    const records = readRecords(
      gridOf(
        sheetValues(`
          Batch | Variety | Sown       | Seeds sown | Germinated | Grafted on | Grafts made
          B1    | Alba    | 2026-09-01 | 240        | 200        |            |
          B2    | Alba    | 2026-09-10 | 120        | 100        |            |
          B3    | Nera    | 2026-09-05 |            |            |            |`),
      ),
      {
        stepNames: timetable.methods.flatMap(({ steps }) => steps.map(({ name }) => name)),
        ...{ asOf, localeOrder: null, decimalMark: null, told: new Map() },
      },
    );
    const { needs, remarks } = workNeeds({ records, timetable, asOf, daysAhead: 30 });
    // 300 plants; 38.1 cm each. Sown 1 September, usually grafted after 90 days.
    const whole = {
      firstNeeded: day("2026-11-30"),
      steps: [{ step: "Grafting", batches: 2, plants: 300 }],
    };
    expect(needs).toEqual([
      { item: "scion", amount: 300, unit: null, ...whole },
      { item: "wrap strip", amount: 114.3, unit: "m", ...whole },
    ]);
    expect(remarks).toEqual([{ code: "tasks-not-counted", tasks: 1 }]);
  });
});
