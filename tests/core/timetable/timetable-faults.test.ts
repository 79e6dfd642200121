import { describe, expect, it } from "vitest";
import { methodReader } from "../../../src/core/timetable/read-method";
import { faultsOf, SMALL, timetableOf } from "./typed-timetable";

const HEADER = "Step|After|From day|Usual day|By day|Counted|Kept of 100|Per person-hour|Needs";
const one = (...rows: string[]) => faultsOf([HEADER, "Sowing||||||||", ...rows].join("\n"));

describe("a timetable that can't be used says why", () => {
  it("where After names a step that is not there", () => {
    expect(one("Ready|Planting|1|2|3||||")).toEqual([
      "3 after no-such-step Planting This nursery's method",
    ]);
  });

  it("where After names a step of another method", () => {
    expect(
      faultsOf("Method|Step|After|Usual day\nA|Sowing||\nA|Ready|Potting|9\nB|Potting||"),
    ).toEqual(["3 after no-such-step Potting A"]);
  });

  it("where After goes round in a circle of three", () => {
    expect(
      one("Potting|Ready|1|2|3||||", "Weeding|Potting|1|2|3||||", "Ready|Weeding|1|2|3||||"),
    ).toEqual(["3 after circle Potting Ready Weeding"]);
  });

  it("where a step comes after itself", () => {
    expect(one("Ready|Ready|1|2|3||||")).toEqual(["3 after circle Ready"]);
  });

  it("where a circle stands beside the line that leads into it", () => {
    expect(
      one("Weeding|Potting|1|2|3||||", "Potting|Ready|1|2|3||||", "Ready|Potting|1|2|3||||"),
    ).toEqual(["3 after after-left-out Potting", "4 after circle Potting Ready"]);
  });

  it.each([
    ["14|10|7", "14 / 10 / 7"],
    ["7|14|10", "7 / 14 / 10"],
    ["11|10|14", "11 / 10 / 14"],
    ["11|10|", "11 / 10 / 10"],
    ["|10|9", "10 / 10 / 9"],
  ])("where the days are %s", (days, found) => {
    const text = `${HEADER}\nSowing||||||||\nReady|Sowing|${days}||||`;
    expect(timetableOf(text).faults).toEqual([
      {
        row: 3,
        column: "usual",
        found,
        code: "days-must-rise",
        step: "Ready",
        leftOut: "method",
      },
    ]);
  });

  it("where a step has no days, or comes before the one it is counted from", () => {
    expect(one("Ready|Sowing|||||||")).toEqual(["3 usual no-usual-day Ready"]);
    expect(one("Ready|Sowing|-3|2|5||||")).toEqual(["3 from before-parent Ready Sowing"]);
  });

  it.each(["101", "0", "-5"])("where %s of 100 are kept", (kept) => {
    expect(one(`Ready|Sowing|1|2|3|yes|${kept}||`)).toEqual(["3 kept kept-out-of-range Ready"]);
  });

  it.each(["100", "0.5", "80%", "80,5"])("but not where %s of 100 are kept", (kept) => {
    expect(one(`Ready|Sowing|1|2|3|yes|${kept}||`)).toEqual([]);
  });

  it.each(["0", "-2"])("where one person does %s in an hour", (rate) => {
    expect(one(`Ready|Sowing|1|2|3|||${rate}|`)).toEqual([
      "3 perPersonHour rate-not-above-0 Ready",
    ]);
  });

  it("where a need has no amount", () => {
    expect(one("Ready|Sowing|1|2|3||||bag")).toEqual(["3 needs needs-unreadable Ready"]);
  });

  it("where a row has days but no step's name", () => {
    expect(one("|Sowing|1|2|3||||")).toHaveLength(1);
  });

  it("but not where a row is a note or the method's name alone", () => {
    expect(
      faultsOf(
        "Method|Step|After|Usual day\nPlum|||\n|Sowing||\n|Ready|Sowing|9\nDays are ours|||",
      ),
    ).toEqual([]);
  });

  it("where a step stands twice, also under another word for it", () => {
    expect(one("Sowing||||||||")).toEqual(["3 step same-step Sowing Sowing This nursery's method"]);
    expect(one("Wrap opened|Sowing|1|2|3||||", "First release|Sowing|1|2|3||||")).toEqual([
      "4 step same-step First release Wrap opened This nursery's method",
    ]);
  });

  it.each([
    ["soon|2|3||||", "3 from no-number"],
    ["1|2|never||||", "3 by no-number"],
    ["1|2|3|yes|most||", "3 kept no-number"],
    ["1|2|3|||fast|", "3 perPersonHour no-number"],
  ])("where a number is none: %s", (cells, fault) => {
    expect(one(`Ready|Sowing|${cells}`)).toContain(fault);
  });

  // Days are whole (timetable.ts); half a day would put every forecast beside midnight.
  it.each(["1.5|2|3", "1|2.5|3", "1|2|3.25"])("where days are no whole days: %s", (days) => {
    expect(one(`Ready|Sowing|${days}||||`)).not.toEqual([]);
  });

  // A window of a million days would fill the memory with the chances of its days.
  it.each(["0|1|1000000", "0|1|1000000000", "0|1|1e300", "4000000|4000000|4000000"])(
    "where days lie beyond any plant's life: %s",
    (days) => {
      const cells = days.replace("1e300", `1${"0".repeat(300)}`);
      expect(one(`Ready|Sowing|${cells}||||`)).not.toEqual([]);
    },
  );
});

describe("of a timetable with faults", () => {
  /** What is left out, and the steps that are left, of a method that ends with Ready. */
  const left = (...rows: string[]) => {
    const { timetable, faults } = timetableOf(
      [HEADER, "Sowing|||||yes|||", ...rows, "Ready|Sowing|90|100|120|yes|90||"].join("\n"),
    );
    return {
      out: faults.map(({ row, code, leftOut }) => `${row} ${code} ${leftOut}`),
      steps: timetable.methods.flatMap(({ steps }) => steps.map(({ name }) => name)),
    };
  };

  it("a row is left out, the rest is used", () => {
    expect(left("Weeding|Sowing|soonish|||||20|")).toEqual({
      out: ["3 no-number row"],
      steps: ["Sowing", "Ready"],
    });
    expect(left("Weeding|Sowing|9|5|7||||", "Feeding|Sowing|9|9|9||||").steps).toEqual([
      ...["Sowing", "Feeding", "Ready"],
    ]);
  });

  it("so are the rows that are counted from it, one after the other", () => {
    const found = left("Potting|Weeding|1|2|3||||", "Weeding|Hoeing|1|2|3||||");
    expect(found).toEqual({
      out: ["3 after-left-out row", "4 no-such-step row"],
      steps: ["Sowing", "Ready"],
    });
  });

  it("of a step that stands twice the first row counts", () => {
    const { timetable, faults } = timetableOf(
      `${HEADER}\nSpray||||||||\nReady|Spray|5|6|7||||\nSpray|Ready|1|2|3||||`,
    );
    expect(faults.map(({ row, leftOut }) => [row, leftOut])).toEqual([[4, "row"]]);
    expect(timetable.methods[0]?.steps.map(({ after }) => after)).toEqual([null, 0]);
  });

  it("a share, a rate or needs that can't be read are left out alone", () => {
    const { timetable, faults } = timetableOf(
      `${HEADER}\nSowing||||||||\nReady|Sowing|1|2|3|yes|most|-2|bag`,
    );
    expect(faults.map(({ leftOut }) => leftOut)).toEqual(["cell", "cell", "cell"]);
    expect(timetable.methods[0]?.steps[1]).toMatchObject({
      kept: null,
      perPersonHour: null,
      needs: [],
      usual: 2,
    });
  });

  it("days that can't be read are as blank where the others tell the window", () => {
    const { timetable, faults } = timetableOf(
      `${HEADER}\nSowing||||||||\nReady|Sowing|10|2 wks|20||||`,
    );
    expect(faults.map(({ code, leftOut }) => [code, leftOut])).toEqual([["no-number", "cell"]]);
    expect(timetable.methods[0]?.steps[1]).toMatchObject({ from: 10, usual: 15, by: 20 });
  });

  // By the step before it, plants would be called ready months too soon.
  it("a method that loses its ready step is left out whole, and knows its place", () => {
    const { timetable, faults } = timetableOf(
      "Method|Step|After|Usual day\nA|Sowing||\nA|Ready|Sowing|soon\nB|Sowing||\nB|Sold|Sowing|9",
    );
    expect(faults.map(({ leftOut }) => leftOut)).toEqual(["method"]);
    expect(timetable.methods.map(({ name }) => name)).toEqual(["B"]);
    const read = methodReader(timetable);
    // Blank means the first of the table, which is not B.
    expect(read({ method: "" }).code).toBe("no-such-method");
    expect(read({ method: "a" }).code).toBe("no-such-method");
    expect(read({ method: "b" }).code).toBe("method");
  });

  it("a batch of a lost method is never taken for another's of the same way", () => {
    const { timetable } = timetableOf(
      "Method|Step|After|Usual day\nPlum cleft|Sowing||\nPlum cleft|Ready|Sowing|9\nPear cleft|Sowing||\nPear cleft|Ready|Nowhere|9",
    );
    const read = methodReader(timetable);
    expect(read({ method: "Cleft" }).code).toBe("several-methods");
    expect(read({ method: "Cleft", crop: "Pear" }).code).toBe("no-such-method");
  });

  it("take only their own method out of use", () => {
    const text = `${SMALL}\nPear | Sowing | Ready | | 1 | | | | | | |`;
    const { timetable, faults } = timetableOf(text);
    expect(timetable.methods.map(({ name }) => name)).toEqual(["Plum budding"]);
    expect(faults).toHaveLength(1);
  });
});
