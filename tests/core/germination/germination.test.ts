import { describe, expect, it } from "vitest";
import { germinationMeasures } from "../../../src/core/germination/germination";
import { fixture } from "../../support/fixtures";

interface Row {
  readonly counts: readonly number[];
  readonly sown: number;
}
interface Measured {
  readonly meanTime: number;
  readonly varianceOfTime: number;
  readonly standardErrorOfMeanTime: number;
  readonly daysToHalfCoolbear: number;
  readonly daysToHalfFarooq: number;
  readonly daysToHalfCoolbearPublished: number;
  readonly daysToHalfFarooqPublished: number;
  readonly speedMaguire: number;
  readonly coefficientOfVelocity: number;
  readonly percent: number;
  readonly isTie: boolean;
}
const { data, expected } = fixture<
  { readonly days: readonly number[]; readonly rows: readonly Row[]; readonly workedExample: Row },
  {
    readonly rows: readonly Measured[];
    readonly workedExample: Measured & { readonly firstDay: number; readonly lastDay: number };
  }
>("germination-metrics");

/** A number as the source prints it: seven digits. */
const printed = (value: number | null) => Number(value?.toPrecision(7));

function measured({ counts, sown }: Row) {
  return germinationMeasures({ days: data.days, counts, sown });
}

describe("published values: germinationmetrics (ICAR-NBPGR), data set gcdata, seven digits", () => {
  it.each(data.rows.map((row, at) => ({ at: at + 1, row, wanted: expected.rows[at] as Measured })))(
    "row $at",
    ({ row, wanted }) => {
      const found = measured(row);
      expect(printed(found.share * 100)).toBe(wanted.percent);
      expect(printed(found.meanDays)).toBe(wanted.meanTime);
      expect(printed(found.varianceDays)).toBe(wanted.varianceOfTime);
      expect(printed(found.standardErrorDays)).toBe(wanted.standardErrorOfMeanTime);
      expect(printed(found.maguireSpeed)).toBe(wanted.speedMaguire);
      expect(printed(found.velocity)).toBe(wanted.coefficientOfVelocity);
      expect(printed(found.halfDaysCoolbear)).toBe(wanted.daysToHalfCoolbear);
      expect(printed(found.halfDaysFarooq)).toBe(wanted.daysToHalfFarooq);
      if (!wanted.isTie) {
        expect(printed(found.halfDaysCoolbear)).toBe(wanted.daysToHalfCoolbearPublished);
        expect(printed(found.halfDaysFarooq)).toBe(wanted.daysToHalfFarooqPublished);
      }
    },
  );

  it("differs from the print by the tie rule in four rows alone, where half is met on day 6", () => {
    const ties = data.rows.flatMap((row, at) => (expected.rows[at]?.isTie ? [measured(row)] : []));
    expect(ties).toHaveLength(4);
    for (const { halfDaysCoolbear, halfDaysFarooq } of ties) {
      expect([halfDaysCoolbear, halfDaysFarooq]).toContain(6);
    }
  });

  it("has the first and last day of the worked example", () => {
    const { firstDay, lastDay, germinated } = measured(data.workedExample);
    expect([firstDay, lastDay, germinated]).toEqual([
      ...[expected.workedExample.firstDay, expected.workedExample.lastDay, 40],
    ]);
  });
});

describe("germinationMeasures", () => {
  it("of nothing come up is blank, not 0, wherever there is nothing to measure", () => {
    expect(germinationMeasures({ days: [4, 7], counts: [0, 0], sown: 50 })).toEqual({
      ...{ germinated: 0, share: 0, firstDay: null, lastDay: null },
      ...{ halfDaysCoolbear: null, halfDaysFarooq: null, meanDays: null },
      ...{ varianceDays: null, standardErrorDays: null, maguireSpeed: 0, velocity: null },
    });
  });

  it("of a single seed has a mean, but no variance", () => {
    expect(germinationMeasures({ days: [4, 7], counts: [0, 1], sown: 50 })).toMatchObject({
      ...{ germinated: 1, meanDays: 7, varianceDays: null, standardErrorDays: null },
      ...{ firstDay: 7, lastDay: 7, halfDaysCoolbear: 7 },
    });
  });

  it("rises evenly between inspections with uneven gaps, from sowing on", () => {
    // 10 by day 4 and 40 by day 10: half of 40 lies a third of the way between.
    const found = germinationMeasures({ days: [4, 10, 30], counts: [10, 30, 0], sown: 50 });
    expect(found.halfDaysFarooq).toBeCloseTo(6, 12);
    expect(found.halfDaysCoolbear).toBeCloseTo(4 + (10.5 / 30) * 6, 12);
    expect(germinationMeasures({ days: [8], counts: [10], sown: 50 }).halfDaysFarooq).toBe(4);
  });

  it("reaches half on the day of an inspection that meets it exactly", () => {
    const found = germinationMeasures({ days: [5, 9], counts: [20, 20], sown: 50 });
    expect(found.halfDaysFarooq).toBe(5);
  });

  it("adds no speed for seeds that came up on day 0", () => {
    const found = germinationMeasures({ days: [0, 4], counts: [5, 8], sown: 50 });
    expect([found.maguireSpeed, found.germinated, found.firstDay]).toEqual([2, 13, 0]);
    expect(germinationMeasures({ days: [0], counts: [5], sown: 50 }).velocity).toBeNull();
  });
});
