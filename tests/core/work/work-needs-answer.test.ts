import { describe, expect, it } from "vitest";
import { gridOf } from "../../../src/core/cells/cell";
import { readRecords } from "../../../src/core/records/read-records";
import { builtInTimetable } from "../../../src/core/timetable/read-timetable";
import { workNeedsAnswer } from "../../../src/core/work/work-needs-answer";
import { rowsByName } from "../../support/answers";
import { day } from "../../support/days";
import { sheetValues } from "../../support/sheet-values";

describe("workNeedsAnswer", () => {
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
    const answer = workNeedsAnswer({ records, timetable, asOf, daysAhead: 30 });
    // 300 plants; 38.1 cm each. Sown 1 September, usually grafted after 90 days.
    const whole = { "First needed": "2026-11-30", For: "Grafting (2 batches, 300 plants)" };
    expect(rowsByName(answer)).toEqual([
      { Item: "scion", Amount: 300, Unit: null, ...whole },
      { Item: "wrap strip", Amount: 11430, Unit: "cm", ...whole },
    ]);
    expect(answer.remark).toBe("1 task without a count of plants not in it");
  });
});
