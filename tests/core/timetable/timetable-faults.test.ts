import { describe, expect, it } from "vitest";
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
    ).toEqual(["4 after circle Potting Ready"]);
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

describe("faults", () => {
  it("take only their own method out of use", () => {
    const text = `${SMALL}\nPear | Sowing | Ready | | 1 | | | | | | |`;
    const { timetable, faults } = timetableOf(text);
    expect(timetable.methods.map(({ name }) => name)).toEqual(["Plum budding"]);
    expect(faults).toHaveLength(1);
  });
});
