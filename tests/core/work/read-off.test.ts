import { describe, expect, it } from "vitest";
import { isoDay } from "../../../src/core/dates/day-text";
import { offReader } from "../../../src/core/work/read-off";
import { day } from "../../support/days";

const HABITS = { asOf: day("2026-11-25"), localeOrder: "day-first" } as const;

/** Days off as they are written on a leave list (invented, from memory, no source), read on 25 November 2026. */
const OFF: readonly (readonly [written: string, stretches: string])[] = [
  ["1/12–3/12", "2026-12-01 2026-12-03"],
  ["1/12-3/12", "2026-12-01 2026-12-03"],
  ["1/12/26 - 3/12/26", "2026-12-01 2026-12-03"],
  ["3/12", "2026-12-03 2026-12-03"],
  ["1/12-3/12; 24/12-2/1", "2026-12-01 2026-12-03, 2026-12-24 2027-01-02"],
  ["1/12, 5/12", "2026-12-01 2026-12-01, 2026-12-05 2026-12-05"],
  ["1/12 and 5/12", "2026-12-01 2026-12-01, 2026-12-05 2026-12-05"],
  ["1 Dec\n7 Dec to 11 Dec", "2026-12-01 2026-12-01, 2026-12-07 2026-12-11"],
  ["1-3 Dec", "2026-12-01 2026-12-03"],
  ["1st to 3rd December", "2026-12-01 2026-12-03"],
  ["from 1 Dec to 3 Dec", "2026-12-01 2026-12-03"],
  ["2026-12-01 to 2026-12-03", "2026-12-01 2026-12-03"],
  ["2026-12-01–2026-12-03", "2026-12-01 2026-12-03"],
  ["Dec 1 - Dec 3", "2026-12-01 2026-12-03"],
  ["du 1er au 3 décembre", "2026-12-01 2026-12-03"],
  ["del 1 al 3 de diciembre", "2026-12-01 2026-12-03"],
  ["1 a 3 de dezembro", "2026-12-01 2026-12-03"],
  ["1 s/d 3 Desember", "2026-12-01 2026-12-03"],
  ["3 Dec (half day)", "2026-12-03 2026-12-03 half"],
  ["3/12 a.m.", "2026-12-03 2026-12-03 half"],
  ["3 déc. après-midi", "2026-12-03 2026-12-03 half"],
  ["1/12-3/12 mornings; 7/12", "2026-12-01 2026-12-03 half, 2026-12-07 2026-12-07"],
];

describe("days off in one cell", () => {
  const read = (written: string) => offReader(() => [written], HABITS)(written);

  it.each(OFF)("%j", (written, stretches) => {
    const off = read(written);
    const said =
      "code" in off
        ? off
        : off.stretches
            .map(
              ({ from, to, isHalf }) =>
                [from, to].map((one) => (one === null ? "open" : isoDay(one))).join(" ") +
                (isHalf ? " half" : ""),
            )
            .join(", ");
    expect(said).toBe(stretches);
  });

  it("may be weekdays", () => {
    const off = read("Sat & Sun");
    expect(
      "code" in off ? off : off.week?.map((part) => ("share" in part ? part.share : null)),
    ).toEqual([...[1, 1, 1, 1, 1, 0, 0]]);
  });

  // December is a month off, not its middle day.
  it.each([["sometime"], ["1/12 or 2/12"], ["December"], ["3/12-1/12"], ["the week after next"]])(
    "%j is not read",
    (written) => {
      expect(read(written)).toHaveProperty("code");
    },
  );
});
